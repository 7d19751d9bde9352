import { readFileSync } from 'node:fs';
import { readDrawing } from '../../../src/drawing/read.ts';
import { drawingText } from '../../../src/drawing/text.ts';
import { drawMotif } from '../../../src/motif/record.ts';
import { changeBytes, changeNumber, changeText } from '../change.ts';
import { type Kind, saidOf, toBytes } from '../kind.ts';

const DRAWINGS = [
  readFileSync('samples/three-leaves.svg', 'utf8'),
  readFileSync('samples/gable-house/leaf-star.svg', 'utf8'),
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100" width="10cm" height="10cm"><style>.a{fill:red}#b{fill:blue}</style><defs><clipPath id="c"><rect x="5" y="5" width="60" height="60"/></clipPath><linearGradient id="g"><stop stop-color="red"/></linearGradient><symbol id="s" viewBox="0 0 10 10"><path d="M0 0L10 0L5 10z"/></symbol></defs><g transform="translate(10 5) rotate(10)" class="a"><path d="M10 50L30 20L90 50z"/><rect id="b" x="10" y="20" width="30" height="20"/></g><use href="#s" x="5" y="6" width="20" height="20"/><rect width="40" height="30" clip-path="url(#c)" fill="url(#g)"/></svg>',
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 60 40"><path d="M5 5L40 30l9-9a5 5 0 01 3 4z" fill="none" stroke="#000" stroke-width="3" stroke-dasharray="9 4"/><polyline points="3 3 40 4 9 30" fill-rule="evenodd" style="fill:#000;opacity:.5"/></svg>',
  '<svg xmlns="http://www.w3.org/2000/svg" width="90mm" height="60mm"><ellipse cx="100" cy="90" rx="60" ry="40" transform="skewX(20)"/><circle cx="200" cy="60" r="30" stroke="black" stroke-linejoin="round" stroke-width="9"/><path d="M10 10C40 90 90-20 120 60S10 90 20 40Q9 9 40 9T90 90H5V60z"/></svg>',
];
const SCRAPS =
  '0 -1 1e9 1e309 NaN - . # < > " & &amp; % url(#g) url(#c) #s none z M A e mm in <g> </g> inherit currentColor matrix(0,0,0,0,0,0) scale(0) scale(1e9) ]]> <!-- use rect path svg 90 stroke fill <![CDATA[ <?x?> <!DOCTYPE> \0 \ud800 é'.split(
    ' ',
  );

const kind: Kind = {
  says: "drawings of one's own (SVG)",
  share: 100,
  limit: 2,
  ending: 'svg',
  make(random) {
    const svg = random.pick(DRAWINGS);
    if (random.chance(0.4)) return toBytes(changeNumber(changeNumber(changeNumber(svg, random), random), random));
    return random.chance(0.8) ? toBytes(changeText(svg, random, SCRAPS)) : changeBytes(toBytes(svg), random);
  },
  async run(bytes) {
    const read = await readDrawing(drawingText(bytes), 'leaf');
    const said = saidOf(read);
    if (!read.ok) return said;
    const { motif, notes } = read.value;
    drawMotif(motif, { across: 30, along: 30 * motif.ratio }, {});
    return { ...said, lines: notes };
  },
};

export default kind;
