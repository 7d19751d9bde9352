/** Names of which more is said than spaces for hyphens. */
const SAID: Record<string, string> = {
  'eight-point-star': 'eight-point star',
  'four-petal': 'four-petal flower',
  'greek-cross': 'Greek cross',
  'greek-key': 'Greek key',
};

/** A motif as it is called in a sentence, by its name in the job file: `quarter-fan` is a `quarter fan`; a drawing of one's own goes by its file. */
export const motifWords = (name: string): string => {
  if (/\.svg$/i.test(name)) return name.split(/[\\/]/).at(-1)!;
  return SAID[name] ?? name.replaceAll('-', ' ');
};
