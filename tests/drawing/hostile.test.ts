import { describe, expect, test } from 'vitest';
import { readDrawing } from '../../src/drawing/read.ts';
import { drawingText } from '../../src/drawing/text.ts';
import { drawMotif } from '../../src/motif/record.ts';
import { file, readBad, readGood, seeded, shareOf } from './support.ts';

const SHAPE = '<path d="M10 10h60v60z"/>';
const entities = (words: string) => `<!DOCTYPE svg [${words}]>${file(SHAPE)}`;
const laughs = Array.from({ length: 12 }, (_, i) => `<!ENTITY l${i + 1} "${`&l${i};`.repeat(10)}">`).join('');

/** Everything that must be refused: the file, the code, and a word that the sentence must hold. */
const REFUSED: [what: string, svg: string, code: string, word: RegExp][] = [
  ['an entity', entities('<!ENTITY a "b">'), 'doctype', /words of its own/],
  ['entities within entities', entities(`<!ENTITY l0 "ha">${laughs}`), 'doctype', /words of its own/],
  ['an entity from a file', entities('<!ENTITY a SYSTEM "file:///etc/passwd">'), 'doctype', /words of its own/],
  ['an entity that nobody explains', file('&copy;<path d="M0 0h9v9z"/>'), 'entity', /shorthand/],
  [
    'a copy from another file',
    file(`${SHAPE}<use href="other.svg#leaf"/>`),
    'elsewhere',
    /other\.svg#leaf.*not fetched/,
  ],
  ['a copy from the web', file('<use xlink:href="https://example.org/a.svg#b"/>'), 'elsewhere', /not fetched/],
  [
    'a colour from the web',
    file('<rect width="9" height="9" fill="url(https://example.org/a.svg#b)"/>'),
    'elsewhere',
    /not fetched/,
  ],
  [
    'a style sheet that imports',
    file(`<style>@import url("https://example.org/a.css");</style>${SHAPE}`),
    'elsewhere',
    /@import/,
  ],
  ['a style sheet in another file', `<?xml-stylesheet href="a.css"?>${file(SHAPE)}`, 'elsewhere', /another file/],
  ['a copy of what it stands in', file('<g id="a"><use href="#a"/></g>'), 'loop', /back to itself/],
  [
    'copies of each other',
    file('<g id="a"><use href="#b"/></g><g id="b"><use href="#a"/></g>'),
    'loop',
    /back to itself/,
  ],
  [
    'a clip that cuts itself',
    file(
      `<clipPath id="c" clip-path="url(#c)"><rect width="9" height="9"/></clipPath><g clip-path="url(#c)">${SHAPE}</g>`,
    ),
    'loop',
    /back to itself/,
  ],
  ['a mask', file(`<g mask="url(#m)">${SHAPE}</g>`), 'mask', /mask/],
  [
    'a clip in shares',
    file(
      `<clipPath id="c" clipPathUnits="objectBoundingBox"><rect width="1" height="1"/></clipPath><g clip-path="url(#c)">${SHAPE}</g>`,
    ),
    'clip',
    /shares/,
  ],
  ['a clip by formula', file('<rect width="50" height="50" clip-path="circle(20px)"/>'), 'clip', /circle/],
  [
    'a transform that is none',
    file('<rect width="5" height="5" transform="rotate(ten)"/>'),
    'transform',
    /rotate\(ten\)/,
  ],
  ['a page of no width', file(SHAPE, 'viewBox="0 0 0 100"'), 'size', /above 0/],
  ['a page below 0', file(SHAPE, 'viewBox="0 0 100 -100"'), 'size', /above 0/],
  ['a page of words', file(SHAPE, 'viewBox="none of it"'), 'size', /four numbers/],
  ['a width of 0', file(SHAPE, 'viewBox="0 0 9 9" width="0"'), 'size', /width is "0"/],
  ['a height below 0', file(SHAPE, 'width="9" height="-3cm"'), 'size', /height is "-3cm"/],
  [
    'a page as long as a street',
    file('<rect width="1000" height="1"/>', 'viewBox="0 0 1000 1"'),
    'size',
    /times as wide/,
  ],
  ['a number beyond all numbers', file('<rect width="1e309" height="5"/>'), 'far', /too large/],
  ['a path beyond all numbers', file('<path d="M0 0L1e400 5L5 5z"/>'), 'far', /too large/],
  ['a point far off', file('<path d="M0 0L1e12 5L5 5z"/>'), 'far', /far|away/],
  [
    'a transform beyond all numbers',
    file('<g transform="scale(1e200)"><rect transform="scale(1e200)" width="5" height="5"/></g>'),
    'far',
    /large|away/,
  ],
  ['a line as wide as the sea', file('<path d="M0 0L9 9" stroke="red" stroke-width="1e300"/>'), 'far', /away/],
  ['widths that are no numbers', file('<rect width="NaN" height="5"/>'), 'nothing', /"NaN"/],
  ['sizes below 0', file('<rect width="-50" height="50"/><circle r="-3"/>'), 'nothing', /below 0/],
  ['deep nesting', file(`${'<g>'.repeat(50_000)}${'</g>'.repeat(50_000)}`), 'too-deep', /64 deep/],
  [
    'copies that double thirty times',
    file(
      `<defs><g id="a0"><rect width="1" height="1"/></g>${Array.from({ length: 30 }, (_, i) => `<g id="a${i + 1}"><use href="#a${i}"/><use href="#a${i}"/></g>`).join('')}</defs><use href="#a30"/>`,
    ),
    'too-many',
    /20000 elements/,
  ],
  [
    'a long chain of copies',
    file(
      `<g id="a0">${SHAPE}</g>${Array.from({ length: 300 }, (_, i) => `<g id="a${i + 1}"><use href="#a${i}"/></g>`).join('')}`,
    ),
    'too-deep|too-many',
    /deep|elements/,
  ],
  ['more elements than are read', file('<g/>'.repeat(20_001)), 'too-many', /20000 elements/],
  ['a path of half a million points', file(`<path d="M0 0L${'1 1 '.repeat(480_000)}"/>`), 'too-many', /500000 numbers/],
  ['a path of 200 000 points', file(`<path d="M0 0L${'1 1 '.repeat(200_000)}"/>`), 'too-many', /20000 lines/],
  ['an arc of 200 000 numbers', file(`<path d="M0 0a${'1 1 0 01 3 3 '.repeat(30_000)}"/>`), 'too-many', /20000 lines/],
  ['more than 2 MB', file(`<!--${'x'.repeat(2_100_000)}-->${SHAPE}`), 'too-large', /2\.1 MB; at most 2 MB/],
  ['many rules', file(`<style>${'a,'.repeat(3000)}b{fill:red}</style>${SHAPE}`), 'too-many', /2000 rules/],
  [
    'dashes without end',
    file('<path stroke="red" stroke-dasharray="1e-5" d="M0 0L90 90"/>'),
    'too-many',
    /5000 dashes/,
  ],
  ['a tangle', file(`<path d="M0 0L${tangle(9000)}z"/>`), 'tangled', /cross/],
  [
    'a file cut short',
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><path d="M0 0h9v9z"/>',
    'cut-short',
    /ends before/,
  ],
  [
    'a file cut short in a word',
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><pa',
    'cut-short|not-svg',
    /ends before|no well-formed/,
  ],
  ['a web page', '<!DOCTYPE html><html><svg></svg></html>', 'not-svg', /web page/],
  ['another language', '<note><to>you</to></note>', 'not-svg', /begins with <note>/],
  ['plain words', 'a leaf, please', 'not-svg', /well-formed/],
  ['nothing', '', 'empty-file', /empty/],
  ['blanks', ' \n\t ', 'empty-file', /empty/],
  ['a picture', '\uFFFDPNG\r\n\u001A\n\0\0', 'not-svg', /PNG/],
  ['a squeezed file', '\u001F\uFFFD\b\0', 'not-svg', /compressed/],
  ['a PDF', '%PDF-1.4', 'not-svg', /PDF/],
  ['zero bytes', '<\0s\0v\0g\0/\0>\0', 'not-text', /zero bytes/],
  ['an svg of nothing', file(''), 'nothing', /no shape/],
  ['only words', file('<text x="5" y="50">leaf</text>'), 'nothing', /Letters/],
  ['only a picture', file('<image href="data:image/png;base64,AAAA" width="50" height="50"/>'), 'nothing', /dots/],
  [
    'three colours',
    file(
      '<rect width="50" height="50" fill="red"/><rect x="50" width="30" height="50" fill="blue"/><rect y="50" width="20" height="50" fill="#0b0"/>',
    ),
    'colours',
    /3 colours: red .*blue .*#00bb00/,
  ],
];

function tangle(count: number): string {
  const random = seeded(5);
  return Array.from({ length: count }, () => `${(random() * 100).toFixed(2)} ${(random() * 100).toFixed(2)}`).join(' ');
}

describe('refused, in plain words and in little time', () => {
  test.each(REFUSED)('%s', async (_, svg, code, word) => {
    const started = performance.now();
    const issue = await readBad(svg);
    expect(performance.now() - started).toBeLessThan(15_000);
    expect(issue.code).toMatch(new RegExp(`^drawing/(${code})$`));
    expect(issue.says).toMatch(word);
    expect(issue.path).toEqual(['leaf']);
    expect(issue.hint).toBeTruthy();
    expect(issue.says.length).toBeLessThan(700);
    expect(`${issue.says} ${issue.hint}`).not.toMatch(/undefined|\[object|Error:|\bat .*\.ts\b|SvgPath/);
  });

  test('an issue says where', async () => {
    const issue = await readBad(
      '<svg xmlns="http://www.w3.org/2000/svg">\n  <g>\n    <rect transform="up"/>\n  </g>\n</svg>',
    );
    expect([issue.line, issue.column]).toEqual([3, 5]);
  });
});

/** What is left out with a note: the file, and a word of the note. What else is in the file is read as if it were not there. */
const LEFT_OUT: [what: string, extra: string, word: RegExp][] = [
  ['a script', '<script>alert(1)</script>', /script was left out/],
  ['a script from the web', '<script href="https://example.org/a.js"/>', /script was left out/],
  ['an instruction to a browser', '<g onload="alert(1)"/>', /Instructions to a browser/],
  ['a link that runs a script', '<a href="javascript:alert(1)"/>', /link was left out/],
  ['a picture from the web', '<image href="https://example.org/a.png" width="9" height="9"/>', /dots \(image\)/],
  ['a picture in the file', '<image href="data:image/png;base64,AAAA" width="99" height="99"/>', /dots \(image\)/],
  [
    'a web page in the drawing',
    '<foreignObject width="99" height="99"><p xmlns="http://www.w3.org/1999/xhtml">a</p></foreignObject>',
    /foreignObject/,
  ],
  ['letters', '<text x="5" y="90">leaf</text>', /Letters \(text\)/],
  ['movement', '<animate attributeName="x"/>', /Movement/],
  ['a face to fetch', '<style>@font-face{font-family:a;src:url(https://example.org/a.woff)}</style>', /@font-face/],
  ['a rule that is not understood', '<style>g > path{fill:red}</style>', /"g > path" was left out/],
  ['a copy of nothing', '<use href="#gone"/>', /no such part/],
  ['an effect', '<g filter="url(#blur)"/>', /effect/],
  ['an unknown element', '<hexagon r="5"/>', /<hexagon>/],
];

describe('left out, with a note', () => {
  test.each(LEFT_OUT)('%s', async (_, extra, word) => {
    const plain = await readGood(file(SHAPE));
    const read = await readGood(file(extra + SHAPE));
    expect(read.drawn).toEqual(plain.drawn);
    expect(plain.notes).toEqual([]);
    expect(read.notes).toHaveLength(1);
    expect(read.notes[0]).toMatch(word);
  });

  test('a document type that only names one', async () => {
    const read = await readGood(
      `<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">${file(SHAPE)}`,
    );
    expect(shareOf(read)).toBeCloseTo(0.18, 9);
  });

  test('what other programs keep in the file for themselves, without a note', async () => {
    const own = '<draw:view xmlns:draw="urn:draw" zoom="3"/><tool:grid/><metadata><a:b xmlns:a="urn:a"/></metadata>';
    expect((await readGood(file(own + SHAPE))).notes).toEqual([]);
  });

  test('a note names its lines once', async () => {
    const { notes } = await readGood(file(`\n<text/>\n<text/><text/>\n${SHAPE}`));
    expect(notes).toEqual([
      'Letters (text) were left out; turn them into outlines in the drawing program to keep them (lines 2 and 3).',
    ]);
  });
});

describe('files as they come', () => {
  const bytes = (text: string, little: boolean) => {
    const found = new Uint8Array(2 * text.length + 2);
    const view = new DataView(found.buffer);
    view.setUint16(0, 0xfeff, little);
    [...text].forEach((sign, i) => {
      view.setUint16(2 * i + 2, sign.charCodeAt(0), little);
    });
    return found;
  };

  test.each([
    ['UTF-8', new TextEncoder().encode(file(SHAPE))],
    ['UTF-8 with a byte order mark', new TextEncoder().encode(`\uFEFF${file(SHAPE)}`)],
    ['UTF-16, little end first', bytes(file(SHAPE), true)],
    ['UTF-16, big end first', bytes(file(SHAPE), false)],
  ])('%s', async (_, given) => {
    expect(shareOf(await readGood(drawingText(given)))).toBeCloseTo(0.18, 9);
  });

  test('names of properties of objects are names like others', async () => {
    const read = await readGood(
      file(
        '<g __proto__="x" constructor="y" id="__proto__" class="constructor"><use href="#toString"/></g><path id="toString" d="M10 10h60v60z"/>',
      ),
    );
    expect(shareOf(read)).toBeCloseTo(0.18, 9);
  });
});

const SEEDS = [
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100" width="10cm" height="10cm"><style>.a{fill:red}#b{fill:blue}</style><defs><clipPath id="c"><rect x="5" y="5" width="60" height="60"/></clipPath><linearGradient id="g"><stop stop-color="red"/></linearGradient><symbol id="s" viewBox="0 0 10 10"><path d="M0 0L10 0L5 10z"/></symbol></defs><g transform="translate(10 5) rotate(10)" class="a"><path d="M10 50L30 20L90 50z"/><rect id="b" x="10" y="20" width="30" height="20"/></g><use href="#s" x="5" y="6" width="20" height="20"/><rect width="40" height="30" clip-path="url(#c)" fill="url(#g)"/></svg>`,
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 60 40"><path d="M5 5L40 30l9-9a5 5 0 01 3 4z" fill="none" stroke="#000" stroke-width="3" stroke-dasharray="9 4"/><polyline points="3 3 40 4 9 30" fill-rule="evenodd" style="fill:#000;opacity:.5"/></svg>`,
  file('<path d="M10 10h60v60z"/><polygon points="1,2 30,4 20,40"/>'),
];
const SCRAPS =
  '0 -1 1e9 1e309 NaN - . # < > " & &amp; % url(#g) url(#c) #s none z M A e mm in <g> </g> inherit currentColor matrix(0,0,0,0,0,0) scale(0) ]]> <!-- use rect path svg 90 stroke fill \0 \ud800 é'.split(
    ' ',
  );

/** A file changed at one to three places: signs put in, taken out, copied, numbers and values changed. */
function changed(svg: string, random: () => number): string {
  const pick = <T>(from: T[]): T => from[Math.floor(random() * from.length)]!;
  let text = svg;
  for (let left = 1 + Math.floor(random() * 3); left > 0; left--) {
    const at = Math.floor(random() * text.length);
    const way = random();
    if (way < 0.25) text = text.slice(0, at) + pick(SCRAPS) + text.slice(at);
    else if (way < 0.4) text = text.slice(0, at) + text.slice(at + 1 + Math.floor(random() * 4));
    else if (way < 0.5) text = text.slice(0, at) + text.slice(at, at + 20) + text.slice(at);
    else {
      const values = [...text.matchAll(way < 0.75 ? /\d+(?:\.\d+)?/g : /"[^"]*"/g)];
      if (values.length === 0) continue;
      const old = pick(values);
      const value = way < 0.75 ? pick(['0', '1', '-5', '1e4', '1e-7', '33.3', '500', '']) : pick(values)[0];
      text = text.slice(0, old.index) + value + text.slice(old.index + old[0].length);
    }
  }
  return text;
}

test('two thousand four hundred files changed at random (seed 11): read or refused, never thrown, never slow', async () => {
  const random = seeded(11);
  const codes = new Map<string, number>();
  const started = performance.now();
  for (let i = 0; i < 2400; i++) {
    const svg = changed(SEEDS[i % SEEDS.length]!, random);
    const before = performance.now();
    const result = await readDrawing(svg, 'leaf');
    expect(performance.now() - before, svg).toBeLessThan(5000);
    const code = result.ok ? 'read' : result.issues[0]!.code;
    codes.set(code, (codes.get(code) ?? 0) + 1);
    if (result.ok) drawMotif(result.value.motif, { across: 30, along: 30 * result.value.motif.ratio }, {});
  }
  expect(codes.get('read')).toBeGreaterThan(400);
  expect(codes.size).toBeGreaterThan(6);
  expect(codes.get('drawing/unreadable')).toBeUndefined();
  expect(performance.now() - started).toBeLessThan(55_000);
});

test('a heavy file that is taken: 1500 circles, of the area of 1500 circles', async () => {
  const circles = Array.from(
    { length: 1500 },
    (_, i) => `<circle cx="${(i % 50) * 2 + 1}" cy="${Math.floor(i / 50) * 3 + 2}" r=".8"/>`,
  ).join('');
  const read = await readGood(file(circles));
  expect(read.drawn[0]!.pieces).toHaveLength(1500);
  // Quarters of a circle as cubics bulge by 0.0273 % of the radius at most.
  expect(Math.abs(shareOf(read) / (1500 * Math.PI * 0.008 ** 2) - 1)).toBeLessThan(6e-4);
});
