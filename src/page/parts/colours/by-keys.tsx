/** Where it is told what arrows do. */
export const KEYS = 'colours-keys';

/** Told once for all groups of this part that the tab key passes in few steps; hidden where there are fingers for keys. */
export const ByKeys = () => (
  <p class="usual by-keys" id={KEYS}>
    Keys: in what follows, up and down go from paint to paint, or from part to part; left and right along buttons.
  </p>
);
