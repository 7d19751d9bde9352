/** Words for walls and corners, as one stands at the near wall and looks along the work. */
export const WALLS = [
  ['near', 'the near wall'],
  ['right', 'the right wall'],
  ['far', 'the far wall'],
  ['left', 'the left wall'],
] as const;

export const CORNERS = [
  ['near-left', 'the near left corner'],
  ['near-right', 'the near right corner'],
  ['far-right', 'the far right corner'],
  ['far-left', 'the far left corner'],
] as const;
