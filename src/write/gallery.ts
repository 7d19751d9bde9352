import type { Kind, Motif, Part, Settings } from '../motif/motif.ts';
import { INK, SOFT } from './ink.ts';
import { loadLettering } from './label.ts';
import { formatMm } from './number.ts';
import { Sketch } from './sketch.ts';
import { specimenOf, specimenPaths } from './specimen.ts';
import { element, escapeText } from './svg.ts';

/** Paper, ground of the specimens, and two colours for the parts of a motif. */
const PAPER = '#f6efe0';
const GROUND = '#e8dcc2';
const FIRST = '#28394d';
const SECOND = '#a8542f';

const hex = (part: Part): string =>
  part === 'ground' ? GROUND : part.endsWith('alternate') || part === 'inset' ? SECOND : FIRST;

/** Lengths in mm. */
const TILE = 60;
const GAP = 12;
const LABEL = 4.2;
const COLUMNS = 8;
const MARGIN = 14;
const ROW = TILE + GAP + LABEL + 2;
const HEAD = 16;

const HEADS: Record<Kind, string> = { field: 'Fields', border: 'Borders', corner: 'Corners', medallion: 'Medallions' };

const usual = (motif: Motif): Settings =>
  Object.fromEntries(Object.entries(motif.parameters).map(([name, { default: value }]) => [name, value]));

function document(width: number, height: number, title: string, desc: string, content: string): string {
  const size = {
    width: `${formatMm(width)}mm`,
    height: `${formatMm(height)}mm`,
    viewBox: `0 0 ${formatMm(width)} ${formatMm(height)}`,
  };
  return `${element(
    'svg',
    { xmlns: 'http://www.w3.org/2000/svg', ...size, role: 'img' },
    [
      '',
      element('title', {}, escapeText(title)),
      element('desc', {}, escapeText(desc)),
      element('rect', { width: formatMm(width), height: formatMm(height), fill: PAPER }),
      content,
      '',
    ].join('\n'),
  )}\n`;
}

/** A specimen on its ground, its left top corner at (x, y). */
async function tile(motif: Motif, settings: Settings, x: number, y: number, size: number): Promise<string> {
  const specimen = await specimenOf(motif, settings, size);
  const [cx, cy] = [x + size / 2, y + size / 2];
  const { left, top, right, bottom } = specimen.box;
  const ground = element('rect', {
    x: formatMm(cx + left),
    y: formatMm(cy + top),
    width: formatMm(right - left),
    height: formatMm(bottom - top),
    fill: GROUND,
  });
  return `${ground}\n${specimenPaths(specimen, [cx, cy], hex)}`;
}

/** Every motif at its usual settings, kind by kind, with its name. */
export async function writeGallery(motifs: Motif[]): Promise<string> {
  const sketch = new Sketch(await loadLettering(), LABEL);
  const width = 2 * MARGIN + COLUMNS * TILE + (COLUMNS - 1) * GAP;
  const drawn: string[] = [];
  let y = MARGIN;
  for (const kind of ['field', 'border', 'corner', 'medallion'] as const) {
    const own = motifs.filter((motif) => motif.kind === kind);
    if (own.length === 0) continue;
    sketch.label(HEADS[kind], [MARGIN, y + HEAD / 3], 'start', { size: 8 });
    y += HEAD;
    for (const [at, motif] of own.entries()) {
      const x = MARGIN + (at % COLUMNS) * (TILE + GAP);
      const top = y + Math.floor(at / COLUMNS) * ROW;
      drawn.push(await tile(motif, usual(motif), x, top, TILE));
      sketch.label(motif.name, [x + TILE / 2, top + TILE + LABEL], 'middle', { fill: INK });
    }
    y += Math.ceil(own.length / COLUMNS) * ROW + GAP / 2;
  }
  const names = motifs.map(({ name }) => name).join(', ');
  return document(width, y + MARGIN / 2, 'The motifs', names, [...drawn, sketch.text].join('\n'));
}

/** One motif, large, with its summary and its settings. */
export async function writeMotif(motif: Motif, settings: Settings): Promise<string> {
  const size = 180;
  const sketch = new Sketch(await loadLettering(), 5);
  const lines = [
    motif.symmetry ? `${motif.kind}, symmetry ${motif.symmetry}` : motif.kind,
    ...Object.entries(motif.parameters).map(
      ([name, { says, min, max }]) => `${name} ${plain(settings[name]!)} (${plain(min)} to ${plain(max)}): ${says}`,
    ),
  ];
  let y = MARGIN + size + 14;
  sketch.label(motif.name, [MARGIN, y], 'start', { size: 8 });
  sketch.label(motif.summary, [MARGIN, y + 9], 'start');
  y += 17;
  for (const line of lines) {
    sketch.label(line, [MARGIN, y], 'start', { size: 4, fill: SOFT });
    y += 6.5;
  }
  const width = Math.max(2 * MARGIN + size, sketch.box.right + MARGIN);
  const content = `${await tile(motif, settings, (width - size) / 2, MARGIN, size)}\n${sketch.text}`;
  return document(width, y + MARGIN / 2, motif.name, [motif.summary, ...lines].join('. '), content);
}

const plain = (value: number): string => String(Number(value.toFixed(3)));
