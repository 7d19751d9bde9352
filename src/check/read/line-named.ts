const SIDES = /^(.+) to the (left|right)$/;

/** The name in marks.csv of a guide line that is named in words: `near border to the left` is `border-near-left`. */
export function lineNamed(words: string): string {
  const joined = (...parts: string[]): string => parts.join('-').replaceAll(' ', '-');
  const [, line, side] = SIDES.exec(words) ?? [];
  if (line === 'line across') return joined('across', side!);
  const along = /^line along to the (near|far) wall$/.exec(words);
  if (along) return joined('along', along[1]!);
  const [, end, border] = /^(near|far) ((?:inner )?border)$/.exec(line ?? '') ?? [];
  if (end) return joined(border!, end, side!);
  if (line) return joined(line, side!);
  const beside = /^(left|right) ((?:inner )?border)$/.exec(words);
  if (beside) return joined(beside[2]!, beside[1]!);
  const cloth = /^(cut|hem) line (across|along) the cloth$/.exec(words);
  if (cloth) return joined(cloth[1]!, cloth[2]!);
  const over = /^(across|up|back over|back along) ((?:riser|tread|wall) \d+)$/.exec(words);
  if (over) return joined(over[2]!, over[1]!.split(' ')[0]!);
  return words === 'axis in the room' ? 'axis-in-room' : joined(words);
}
