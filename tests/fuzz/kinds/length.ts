import { parseCover } from '../../../src/units/cover.ts';
import { parseDuration } from '../../../src/units/duration.ts';
import { parseLength, parseNumber, writeTape } from '../../../src/units/index.ts';
import { parseVolume } from '../../../src/units/volume.ts';
import { changeText } from '../change.ts';
import { type Kind, toBytes, toText } from '../kind.ts';

const GIVEN = [
  `9' 8 3/4"`,
  '12 1/2',
  '3′ 4⅝″',
  '2.5 m',
  '14 3/8 in',
  '1/16"',
  '250 mm',
  '3 ft 2 in',
  '38 cm 5 mm',
  '½ pint',
  '1 1/2 gallons',
  '380 sq ft per gallon',
  '10 m² per litre',
  '4 hours',
  '1 day 2 hours',
  '-7',
  '1e3',
  '0.96',
  'about 3 feet',
];
const SCRAPS = [
  ...`' " ′ ″ / ⁄ ½ ⅞ ³ ₈ . , - – + e E 0 9 1e9 1e309 in ft mm cm m inch feet metre to from per of quart litre ml hours min`.split(
    ' ',
  ),
  ' ',
  '\u00a0',
  '\u200b',
  '\0',
  '\ud800',
  '9'.repeat(400),
  '1/'.repeat(200),
  ' '.repeat(5000),
];

const STEPS = [
  ['in', 25.4 / 16],
  ['mm', 1],
] as const;

/** Lengths, volumes, covers, times and plain numbers, as somebody might type them. */
const kind: Kind = {
  says: 'lengths and other measures',
  share: 200,
  limit: 2,
  ending: 'txt',
  make: (random) => toBytes(changeText(random.pick(GIVEN), random, SCRAPS)),
  async run(bytes) {
    const text = toText(bytes);
    const readers = {
      length: parseLength,
      volume: parseVolume,
      cover: parseCover,
      time: parseDuration,
      number: parseNumber,
    };
    const lines: string[] = [];
    let ended = 'refused';
    for (const [name, reader] of Object.entries(readers)) {
      const found = reader(text);
      if (!found.ok) lines.push(`${found.says}, ${found.hint}`);
      else {
        ended = `taken as ${name}`;
        for (const value of Object.values(found))
          if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`${name} read as ${value}`);
      }
    }
    const length = parseLength(text, 'in');
    if (length.ok) {
      for (const [unit, step] of STEPS) {
        const written = writeTape(length.mm, unit, step);
        const again = parseLength(written);
        lines.push(written);
        if (!again.ok || Math.abs(again.mm - length.mm) > step / 2 + 1e-6 + Math.abs(length.mm) * 1e-9)
          throw new Error(`${length.mm} mm is written ${written}, which reads as ${again.ok ? again.mm : again.says}`);
      }
    }
    return { ended, lines };
  },
};

export default kind;
