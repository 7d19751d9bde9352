/** Names of guide lines as one says them; all others are said with spaces for hyphens. */
const SAID: readonly (readonly [RegExp, string])[] = [
  [/^(cut|hem)-(across|along)$/, '$1 line $2 the cloth'],
  [/^across-(left|right)$/, 'line across to the $1'],
  [/^along-(near|far)$/, 'line along to the $1 wall'],
  [/^(border|inner-border)-(left|right)$/, '$2 $1'],
  [/^(border|inner-border)-(near|far)-(left|right)$/, '$2 $1 to the $3'],
  [/^(lettering|near-lettering|far-lettering)-(left|right)$/, '$1 to the $2'],
  [/^(riser|tread)-(\d+)-across$/, 'across $1 $2'],
  [/^riser-(\d+)-up$/, 'up riser $1'],
  [/^tread-(\d+)-back$/, 'back over tread $1'],
  [/^wall-(\d+)-back$/, 'back along wall $1'],
  [/^axis-in-room$/, 'axis in the room'],
];

/** A guide line in words, by its name in marks.csv: `border-near-left` is the `near border to the left`. */
export function lineWords(name: string): string {
  const said = SAID.find(([pattern]) => pattern.test(name));
  return (said ? name.replace(...said) : name).replaceAll('-', ' ');
}
