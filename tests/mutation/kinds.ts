import { shift } from '../check/support/paint.ts';
import type { Random } from '../fuzz/random.ts';

/** One kind of change to the text of a file: which files, and the text changed at a place that chance picks; the same text where there is none. */
export interface Change {
  name: string;
  files: RegExp;
  edit(text: string, random: Random): string;
}

/** Replaces one of the places that a pattern finds. */
function one(text: string, pattern: RegExp, random: Random, put: (found: RegExpExecArray) => string): string {
  const found = [...text.matchAll(pattern)] as RegExpExecArray[];
  if (found.length === 0) return text;
  const at = random.pick(found);
  return text.slice(0, at.index) + put(at) + text.slice(at.index + at[0].length);
}

/** A whole number one more, or a number with decimals a little more. */
const raised = (number: string): string => {
  const decimals = number.split('.')[1]?.length ?? 0;
  return (Number(number) + (decimals === 0 ? 1 : 0.3)).toFixed(decimals);
};

const attribute = (tag: string, name: string): string => new RegExp(`\\s${name}="([^"]*)"`).exec(tag)?.[1] ?? '';
const rings = (d: string): string[] => d.split(/(?=[Mm])/).filter((ring) => ring !== '');

/** One closed ring of one path that is chosen, changed. Later rings may begin where the one before ends, so they are written from their own start. */
function ring(text: string, tags: RegExp, random: Random, edit: (d: string) => string): string {
  return one(text, tags, random, ([tag]) => {
    const all = rings(absolute(attribute(tag, 'd')));
    const at = random.below(all.length);
    const changed = all.map((d, i) => (i === at ? edit(d) : d)).join('');
    return tag.replace(/\sd="[^"]*"/, ` d="${changed}"`);
  });
}

const absolute = (d: string): string => shift(d, 0, 0);

const PAINTED = /<path\b[^>]*data-element[^>]*>/g;
const WINDOW = /<path\b[^>]*\bid="window-\d+"[^>]*>/g;
const KEY = /<path\b[^>]*\bid="key-\d+"[^>]*>/g;
const LABEL = /(?<=data-label="[^"]*)\d+(?=[^"]*")/g;

/** A ring larger or smaller about its first point. */
function scaled(d: string, by: number): string {
  const [x, y] = /^M(-?[\d.]+)[ ,]?(-?[\d.]+)/.exec(d)!.slice(1).map(Number) as [number, number];
  return scaleAbout(d, by, x, y);
}

function scaleAbout(d: string, by: number, x: number, y: number): string {
  let at = 0;
  // Absolute path text of whole coordinate pairs only: H and V are told apart by their letter.
  return d.replace(/([a-zA-Z])([^a-zA-Z]*)/g, (_, letter: string, numbers: string) => {
    at = 0;
    const moved = (numbers.match(/-?\d*\.?\d+/g) ?? []).map((number) => {
      const isX = letter === 'H' || (letter !== 'V' && at++ % 2 === 0);
      const centre = isX ? x : y;
      return String(centre + (Number(number) - centre) * by);
    });
    return letter + moved.join(' ');
  });
}

/** Numbers of a page that are no part of its styles, drawings or tags. */
const ON_PAGE = /(?<=>[^<>]*)\d+(?:\.\d+)?(?=[^<>]*<\/(?:p|li|dd|td|span)>)/g;

/** The page with its styles, fonts and drawings out of the way while something in it is changed. */
function onPage(text: string, edit: (text: string) => string): string {
  const kept: string[] = [];
  const bare = text.replace(/<style[\s\S]*?<\/style>|<svg[\s\S]*?<\/svg>/g, (piece) => {
    kept.push(piece);
    return `<!--${'k'.repeat(kept.length)}-->`;
  });
  return edit(bare).replace(/<!--(k+)-->/g, (_, which: string) => kept[which.length - 1]!);
}

const rows = (text: string): string[] => text.split(/(?<=\n)/);
/** One row but the first, changed; `undefined` takes it out. */
function row(text: string, random: Random, edit: (row: string) => string, wanted = /./): string {
  const all = rows(text);
  const may = all.flatMap((line, at) => (at > 0 && wanted.test(line) ? [at] : []));
  if (may.length === 0) return text;
  const at = random.pick(may);
  return all.map((line, i) => (i === at ? edit(line) : line)).join('');
}

/** A sixteenth of an inch or a millimetre on: `6 5/16"` reads 6.375 in. */
function step(tape: string): string {
  if (!tape.includes('"'))
    return tape.replace(/[\d.]+/, (number) => String(Math.round((Number(number) + 0.1) * 10) / 10));
  const found = /^(.*?)(?:(\d+)\/(\d+))?(""?)$/.exec(tape)!;
  if (found[2] === undefined) return `${found[1]} 1/16${found[4]}`.replace(/^ /, '');
  const sixteenths = (16 * Number(found[2])) / Number(found[3]) + 1;
  return sixteenths === 16 ? `${found[1]}17/16${found[4]}` : `${found[1]}${sixteenths}/16${found[4]}`;
}

// biome-ignore lint/suspicious/noExplicitAny: the file is changed as it is written
const inLayout = (name: string, edit: (layout: any, random: Random) => void): Change => ({
  name,
  files: /^layout\.json$/,
  edit: (text, random) => {
    const layout = JSON.parse(text);
    try {
      edit(layout, random);
    } catch {
      return text;
    }
    return JSON.stringify(layout, null, 2) === JSON.stringify(JSON.parse(text), null, 2)
      ? text
      : JSON.stringify(layout);
  },
});

export const CHANGES: Change[] = [
  // Shapes on the plan.
  {
    name: 'a piece of the plan 0.2 mm aside',
    files: /^plan\.svg$/,
    edit: (text, random) => ring(text, PAINTED, random, (d) => shift(d, 0.2, 0)),
  },
  {
    name: 'a piece of the plan gone',
    files: /^plan\.svg$/,
    edit: (text, random) => ring(text, PAINTED, random, () => ''),
  },
  {
    name: 'a piece of the plan painted twice',
    files: /^plan\.svg$/,
    edit: (text, random) => ring(text, PAINTED, random, (d) => d + d),
  },
  {
    name: 'a piece of the plan 1 % larger',
    files: /^plan\.svg$/,
    edit: (text, random) => ring(text, PAINTED, random, (d) => scaled(d, 1.01)),
  },
  {
    name: 'a part of the plan in another colour',
    files: /^plan\.svg$/,
    edit: (text, random) => one(text, PAINTED, random, ([tag]) => tag.replace(/fill="#\w+"/, 'fill="#123456"')),
  },
  {
    name: 'a length on the plan',
    files: /^plan\.svg$/,
    edit: (text, random) =>
      one(text, /(?<=data-label=")(?:field )?\d+(?=[^"]*(?:&quot;|mm|cm)[^"]*")/g, random, ([found]) =>
        found.replace(/\d+/, raised),
      ),
  },
  {
    name: 'the whole plan 1 % smaller',
    files: /^plan\.svg$/,
    edit: (text) => text.replace(/ (width|height)="([\d.]+)mm"/g, (_, side, mm) => ` ${side}="${Number(mm) * 0.99}mm"`),
  },
  {
    name: 'a number in the description of the plan',
    files: /^plan\.svg$/,
    edit: (text, random) => one(text, /(?<=(?:Overall|Field|Border|strip) )\d+/g, random, ([found]) => raised(found)),
  },
  // The room, the cloth, the flight.
  {
    name: 'paint in the room 0.3 mm aside',
    files: /^room\.svg$/,
    edit: (text, random) => ring(text, PAINTED, random, (d) => shift(d, 0.3, 0)),
  },
  {
    name: 'paint in the room gone',
    files: /^room\.svg$/,
    edit: (text, random) => ring(text, PAINTED, random, () => ''),
  },
  {
    name: 'a length of a wall',
    files: /^room\.svg$/,
    edit: (text, random) =>
      one(text, /(?<=data-label="(?:near|right|far|left) wall )\d+/g, random, ([found]) => raised(found)),
  },
  {
    name: 'a wall 2 mm off',
    files: /^room\.svg$/,
    edit: (text, random) =>
      one(text, /<path\b[^>]*data-wall[^>]*>/g, random, ([tag]) =>
        tag.replace(/\sd="([^"]*)"/, (_, d) => ` d="${shift(d, 2, 2)}"`),
      ),
  },
  {
    name: 'an edge of the cloth 1 mm off',
    files: /^cloth\.svg$/,
    edit: (text, random) =>
      one(text, /<path\b[^>]*data-line="(?:cut|finished|trimmed|fold|mitre)"[^>]*>/g, random, ([tag]) =>
        tag.replace(/\sd="([^"]*)"/, (_, d) => ` d="${shift(d, 1, 0)}"`),
      ),
  },
  {
    name: 'a length of the cloth',
    files: /^cloth\.svg$/,
    edit: (text, random) =>
      one(text, /(?<=data-label="(?:finished|cut|trimmed)? ?)\d+(?= ?[\d/]*&quot;)/g, random, ([found]) =>
        raised(found),
      ),
  },
  {
    name: 'a size in the description of the cloth',
    files: /^cloth\.svg$/,
    edit: (text, random) =>
      one(text, /(?<=(?:finished|trimmed|cut) )\d+(?=[^"]* across by)/g, random, ([found]) => raised(found)),
  },
  {
    name: 'a panel of the flight 0.3 mm aside',
    files: /^flight\.svg$/,
    edit: (text, random) => ring(text, PAINTED, random, (d) => shift(d, 0.3, 0)),
  },
  {
    name: 'a length beside the flight',
    files: /^flight\.svg$/,
    edit: (text, random) => one(text, LABEL, random, ([found]) => raised(found)),
  },
  // Stencils.
  {
    name: 'a window 0.2 mm onward',
    files: /^stencil-.*\.svg$/,
    edit: (text, random) => ring(text, WINDOW, random, (d) => shift(d, 0, 0.2)),
  },
  {
    name: 'a window 1 % larger',
    files: /^stencil-.*\.svg$/,
    edit: (text, random) => ring(text, WINDOW, random, (d) => scaled(d, 1.01)),
  },
  { name: 'a window gone', files: /^stencil-.*\.svg$/, edit: (text, random) => one(text, WINDOW, random, () => '') },
  {
    name: 'a window twice',
    files: /^stencil-.*\.svg$/,
    edit: (text, random) => one(text, WINDOW, random, ([tag]) => tag + tag),
  },
  {
    name: 'a key 0.3 mm aside',
    files: /^stencil-.*\.svg$/,
    edit: (text, random) => ring(text, KEY, random, (d) => shift(d, 0.3, 0.3)),
  },
  { name: 'a key gone', files: /^stencil-.*\.svg$/, edit: (text, random) => one(text, KEY, random, () => '') },
  {
    name: 'the names of two windows changed over',
    files: /^stencil-.*\.svg$/,
    edit: (text) =>
      text
        .replace('id="window-1"', 'id="w"')
        .replace('id="window-2"', 'id="window-1"')
        .replace('id="w"', 'id="window-2"'),
  },
  {
    name: 'a count in the description of a sheet',
    files: /^stencil-.*\.svg$/,
    edit: (text, random) =>
      one(text, /\d+(?= (?:windows?|keys?|times?|passe?s?)\b)/g, random, ([found]) => raised(found)),
  },
  {
    name: 'a line in the colour of another kind',
    files: /^stencil-.*\.svg$/,
    edit: (text, random) => one(text, WINDOW, random, ([tag]) => tag.replace(/stroke="#\w+"/, 'stroke="#0066cc"')),
  },
  // The template.
  {
    name: 'the template 1 % larger',
    files: /^template\.svg$/,
    edit: (text, random) => ring(text, /<path\b[^>]*data-part[^>]*>/g, random, (d) => scaled(d, 1.01)),
  },
  {
    name: 'a notch 1 mm aside',
    files: /^template\.svg$/,
    edit: (text, random) => ring(text, /<path\b[^>]*data-line="notch"[^>]*>/g, random, (d) => shift(d, 1, 1)),
  },
  {
    name: 'a number in the description of the template',
    files: /^template\.svg$/,
    edit: (text) => text.replace(/(One repeat, )(\d+)/, (_, words, number) => words + raised(number)),
  },
  // Marks.
  {
    name: 'a line drawn to another scale than it tells',
    files: /^marks\.svg$/,
    edit: (text) => text.replace(/Scale 1:(\d+)/, (_, scale) => `Scale 1:${Number(scale) + 5}`),
  },
  {
    name: 'a mark read one step on',
    files: /^marks\.csv$/,
    edit: (text, random) =>
      row(
        text,
        random,
        (line) =>
          line.replace(
            /^((?:"[^"]*"|[^",]*),(?:"[^"]*"|[^",]*),\d*,)("(?:[^"]|"")*"|[^,]*)/,
            (_, before, tape) => before + (tape.startsWith('"') ? `"${step(tape.slice(1, -1))}"` : step(tape)),
          ),
        /,\d+,/,
      ),
  },
  {
    name: 'a mark 0.6 mm from true',
    files: /^marks\.csv$/,
    edit: (text, random) =>
      row(
        text,
        random,
        (line) => line.replace(/,(\d+(?:\.\d+)?),(?=[^,]*(?:,[^,]*)?\r?$)/m, (_, mm) => `,${Number(mm) + 0.6},`),
        /,\d+(?:\.\d+)?,[^",]*\r?\n$/,
      ),
  },
  { name: 'a mark gone', files: /^marks\.csv$/, edit: (text, random) => row(text, random, () => '', /^(?!span)/) },
  {
    name: 'two repeats of a mark counted on',
    files: /^marks\.csv$/,
    edit: (text, random) =>
      one(text, /between (?:border )?\w+ (\d+) and (\d+)/g, random, ([found]) => found.replace(/\d+/g, raised)),
  },
  {
    name: 'a number of a mark',
    files: /^marks\.csv$/,
    edit: (text, random) => one(text, /,(\d+)(?=,"?\d)/g, random, ([, number]) => `,${raised(number!)}`),
  },
  {
    name: 'a reading on the drawing of the marks',
    files: /^marks\.svg$/,
    edit: (text, random) => allAlike(text, /data-label="([^"]*\d[^"]*)"/g, random),
  },
  {
    name: 'a reading in large type',
    files: /^marks-large\.html$/,
    edit: (text, random) =>
      onPage(text, (page) =>
        one(page, /<p class="tape"[^>]*>(?:<span[^>]*>)*(\d+)/g, random, ([found]) => found.replace(/\d+$/, raised)),
      ),
  },
  {
    name: 'what a mark in large type is for',
    files: /^marks-large\.html$/,
    edit: (text, random) => onPage(text, (page) => one(page, /\d+(?= and \d)/g, random, ([found]) => raised(found))),
  },
  {
    name: 'a mark in large type gone',
    files: /^marks-large\.html$/,
    edit: (text, random) =>
      onPage(text, (page) =>
        one(page, /<section[\s\S]*?<\/section>/g, random, ([found]) => (found.includes('class="tape"') ? '' : found)),
      ),
  },
  // Paint.
  {
    name: 'a number of the paint',
    files: /^paint\.csv$/,
    edit: (text, random) =>
      row(text, random, (line) =>
        one(line, /(?<=,)\d+(?:\.\d+)?(?=,)/g, random, ([found]) => String(Number(found) * 1.01 + 1)),
      ),
  },
  { name: 'a paint left out', files: /^paint\.csv$/, edit: (text, random) => row(text, random, () => '') },
  {
    name: 'the tins of a paint',
    files: /^paint\.csv$/,
    edit: (text, random) => row(text, random, (line) => line.replace(/,([^,]*),([^,]*)$/, ',9 gallons,$2')),
  },
  // The job sheet.
  {
    name: 'a number on the job sheet',
    files: /^job-sheet\.html$/,
    edit: (text, random) => onPage(text, (page) => one(page, ON_PAGE, random, ([found]) => raised(found))),
  },
  {
    name: 'a row of the job sheet gone',
    files: /^job-sheet\.html$/,
    edit: (text, random) => onPage(text, (page) => one(page, /<tr>(?:(?!<th)[\s\S])*?<\/tr>/g, random, () => '')),
  },
  {
    name: 'an item of the job sheet gone',
    files: /^job-sheet\.html$/,
    edit: (text, random) => onPage(text, (page) => one(page, /<li>[\s\S]*?<\/li>/g, random, () => '')),
  },
  {
    name: 'left and right changed over on the job sheet',
    files: /^job-sheet\.html$/,
    edit: (text, random) =>
      onPage(text, (page) =>
        one(page, /(?<=>[^<>]*\b)(?:left|right)\b(?=[^<>]*<)/g, random, ([side]) =>
          side === 'left' ? 'right' : 'left',
        ),
      ),
  },
  // The history of re-fits.
  {
    name: 'a number of a re-fit',
    files: /^refit\.log\.json$/,
    edit: (text, random) =>
      one(text, /"(?:row|over|left|right|should|until)": ?[\d.]+/g, random, ([found]) =>
        found.replace(/[\d.]+$/, raised),
      ),
  },
  {
    name: 'a new mark read 1/16 in on',
    files: /^refit-1\.csv$/,
    edit: (text, random) =>
      row(text, random, (line) => line.replace(/"((?:[^"]|"")*"")"/, (_, tape) => `"${step(tape)}"`)),
  },
  // The layout.
  inLayout('the work 0.1 mm longer', ({ layout }) => (layout.overall.along += 0.1)),
  inLayout('the pitch 0.05 mm more', ({ layout }, random) => (layout.pitch[random.pick(['across', 'along'])] += 0.05)),
  inLayout('a repeat more', ({ layout }, random) => layout.repeats[random.pick(['across', 'along'])]++),
  inLayout('the border 0.1 mm wider', ({ layout }) => (layout.border += 0.1)),
  inLayout(
    'a placement 0.2 mm off',
    ({ sheets }, random) => (random.pick(random.pick<{ passes: { x: number }[][] }>(sheets).passes.flat()).x += 0.2),
  ),
  inLayout('a placement left out', ({ sheets }, random) =>
    random.pick<{ passes: unknown[][] }>(sheets).passes[0]!.pop(),
  ),
  inLayout('a window taped shut', ({ sheets }, random) =>
    random.pick<{ passes: { open: number[] }[][] }>(sheets).passes[0]![0]!.open.pop(),
  ),
  inLayout('a sheet in another colour', ({ sheets, palette }, random) => {
    const sheet = random.pick<{ colour: string }>(sheets);
    sheet.colour = Object.keys(palette).find((name) => name !== sheet.colour)!;
  }),
  inLayout('two colours changed over', (layout) => {
    const [one, other] = Object.keys(layout.palette);
    [layout.palette[one!], layout.palette[other!]] = [layout.palette[other!], layout.palette[one!]];
  }),
  inLayout('the sentence of the layout', ({ layout, roomBorder }) => {
    const of = layout ?? roomBorder;
    of.says = of.says.replace(/\d+/, raised);
  }),
  inLayout('a sheet off its film', ({ films }) => (films[0].sheets[0].x += 1000)),
  inLayout(
    'the order of the cuts',
    ({ sheets }) => (sheets[0].cut.order = sheets[0].cut.order.split(' ').reverse().join(' ')),
  ),
  inLayout('a page more', ({ print }) => print.pages++),
  inLayout('the correction for the printer', ({ print }) => (print.factor *= 1.001)),
  inLayout(
    'a drawing from another page on',
    ({ print }, random) => random.pick<{ page: number }>(print.drawings).page++,
  ),
  inLayout(
    'the area of a paint 1 % more',
    ({ paint }, random) => (random.pick<{ uses: { area: number }[] }>(paint.paints).uses[0]!.area *= 1.01),
  ),
  inLayout('more to buy', ({ paint }, random) => (random.pick<{ buy: number }>(paint.paints).buy += 5)),
  inLayout('a coat a day early', ({ paint }, random) => {
    const { stints } = paint.days;
    const at = 1 + random.below(stints.length - 1);
    stints[at].day = Math.max(1, stints[at - 1].day - 1);
  }),
  inLayout('rugs a week early', ({ paint }) => (paint.days.rugs -= 7)),
  inLayout('a roll of tape more', ({ paint }) => paint.tape.rolls++),
  inLayout('the hem 1 mm wider', ({ cloth }) => (cloth.hem += 1)),
  inLayout('the cut 2 mm larger', ({ cloth }) => (cloth.cut.across += 2)),
  inLayout('a step 1 mm wider', ({ flight }, random) => (random.pick<{ across: number }>(flight.steps).across += 1)),
  inLayout(
    'a wall of the room 1 mm longer',
    ({ room }, random) => (room.walls[random.pick(['near', 'right', 'far', 'left'])] += 1),
  ),
  inLayout(
    'a corner of the work farther from its wall',
    ({ room }, random) => (random.pick<{ clear: number }>(room.clearances).clear += 1),
  ),
  inLayout(
    'a cut of the floor 1 mm more',
    ({ floor }, random) => (floor.walls[random.pick(['near', 'right', 'far', 'left'])].cut.most += 1),
  ),
  inLayout(
    'a strip of the room border 1 mm wider',
    ({ roomBorder }, random) => (random.pick<{ strip: number }>(roomBorder.walls).strip += 1),
  ),
  inLayout(
    'a repeat more along a wall',
    ({ roomBorder }, random) => random.pick<{ repeats: number }>(roomBorder.walls).repeats++,
  ),
];

/** A reading of the drawing that stands there once, or all that are alike: what is left elsewhere would still be right. */
function allAlike(text: string, pattern: RegExp, random: Random): string {
  const labels = [...text.matchAll(pattern)].map(([, label]) => label!);
  if (labels.length === 0) return text;
  const label = random.pick(labels);
  return text.replaceAll(`data-label="${label}"`, `data-label="${label.replace(/\d+/, raised)}"`);
}
