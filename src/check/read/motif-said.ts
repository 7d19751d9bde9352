const CAPITAL = /^greek\b/;

/** What a sentence calls a motif of this name; a drawing of one's own goes by its file. */
export function motifSaid(name: string): string {
  const file = /[^\\/]+\.svg$/i.exec(name);
  if (file) return file[0];
  const [first = '', ...rest] = name.split('-');
  const number = first === 'four' || first === 'eight';
  const words = (number ? [`${first}-${rest[0]}`, ...rest.slice(1)] : [first, ...rest]).join(' ');
  return words.replace(CAPITAL, 'Greek').replace(/^four-petal$/, '$& flower');
}
