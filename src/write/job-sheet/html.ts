import { htmlPage } from '../html-page.ts';
import { formatMm } from '../number.ts';
import { escapeText } from '../svg.ts';
import { type Block, type Figure, PAGE_WIDTH, type Table } from './block.ts';
import type { JobSheet } from './form.ts';
import { setFractions } from './reading.ts';
import { styleOf } from './style.ts';

/** Words as HTML: fractions set, and what hangs together kept on one line. */
const set = (text: string): string =>
  text
    .split(/([^ \n]*\u00a0[^ \n]*)/)
    .map((part) =>
      part.includes('\u00a0')
        ? `<span class="n">${setFractions(part.replaceAll('\u00a0', ' '))}</span>`
        : setFractions(part),
    )
    .join('');

/** Rows one after another, parted where the table has lines of words between them. */
function bodies({ head, rows, ticked = false, reading, parts = [], swatches }: Table): string {
  const box = ticked ? '<td class="box"></td>' : '';
  const cells = (row: string[], at: number) =>
    row.map((text, column) => {
      const swatch =
        column === 0 && swatches ? `<span class="swatch" style="background:${escapeText(swatches[at]!)}"></span>` : '';
      const look = column === reading ? ' class="read"' : head[column] === 'No.' ? ' class="no"' : '';
      return `<td${look}>${swatch}${set(text)}</td>`;
    });
  const written = rows.map((row, at) => `<tr>${box}${cells(row, at).join('')}</tr>`);
  const starts = parts.length > 0 ? parts.map(({ before }) => before) : [0];
  return starts
    .map((from, n) => {
      const part = parts[n];
      const columns = head.length + (ticked ? 1 : 0);
      const title = part ? `<tr><th colspan="${columns}" scope="rowgroup">${set(part.text)}</th></tr>` : '';
      return `<tbody>${title}${written.slice(from, starts[n + 1] ?? rows.length).join('')}</tbody>`;
    })
    .join('');
}

function table(block: Table): string {
  const { head, ticked, reading, columns, parts } = block;
  const heads = [...(ticked ? ['Done'] : []), ...head].map((text, at) => {
    const look = reading !== undefined && at === reading + (ticked ? 1 : 0) ? ' class="read"' : '';
    return `<th scope="col"${look}>${set(text)}</th>`;
  });
  const look = parts ? ' class="lay"' : reading === undefined ? '' : ' class="reads"';
  const written = `<table${look}><thead><tr>${heads.join('')}</tr></thead>${bodies(block)}</table>`;
  return columns === undefined ? written : `<div class="rows">${written}</div>`;
}

/** The drawing as wide as its share of the page, whatever its own size is. */
function figure({ svg, share }: Figure): string {
  const width = formatMm(share * PAGE_WIDTH);
  const sized = svg.replace(/<svg\b[^>]*>/, (tag) =>
    tag
      .replace(/ (?:width|height|style)="[^"]*"/g, '')
      .replace(/>$/, ` style="width:${width}mm;max-width:100%;height:auto">`),
  );
  return `<div class="figure">${sized.slice(sized.indexOf('<svg'))}</div>`;
}

const ticks = (items: string[], look: string): string =>
  `<ul class="${look}">${items.map((item) => `<li>${set(item)}</li>`).join('')}</ul>`;

function write(block: Block): string {
  switch (block.kind) {
    case 'heading': {
      const { level, text, number } = block;
      const ring = number === undefined ? '' : `<span class="no">${number}</span>`;
      return `<h${level}>${ring}${set(text)}</h${level}>`;
    }
    case 'words': {
      const look = { large: ' class="says"', soft: ' class="soft"' };
      return `<p${block.look ? look[block.look] : ''}>${set(block.text)}</p>`;
    }
    case 'numbers': {
      const items = block.items.map(({ name, value }) => `<div><dt>${set(name)}</dt><dd>${set(value)}</dd></div>`);
      return `<dl class="figures">${items.join('')}</dl>`;
    }
    case 'ticks':
      return ticks(block.items, block.look === 'list' ? 'tick' : 'steps');
    case 'table':
      return table(block);
    case 'figure':
      return figure(block);
    case 'beside': {
      const inside = `<div class="lists">${sections(block.blocks)}</div>`;
      const drawn = figure(block.figure);
      const pair = block.side === 'left' ? `${drawn}${inside}` : `${inside}${drawn}`;
      return `<section class="beside ${block.side}">${pair}</section>`;
    }
    case 'care': {
      const rows = block.items.map(({ what, words }) => `<dt>${set(what)}</dt><dd>${set(words)}</dd>`);
      const last = block.last === undefined ? '' : `<p class="last">${set(block.last)}</p>`;
      return `<section class="care"><h2>Take care</h2><dl>${rows.join('')}</dl>${last}</section>`;
    }
    case 'page':
      return '<div class="page"></div>';
  }
}

/** A short table of readings takes half of the width, so that two stand side by side. */
const isHalf = (blocks: Block[]): boolean =>
  blocks.some(
    (block) => block.kind === 'table' && block.reading !== undefined && block.head.length === 3 && block.reading === 1,
  ) && !blocks.some((block) => block.kind === 'table' && block.columns !== undefined);

/** What begins a part of its own, and so ends the one before it. */
const begins = (block: Block): boolean =>
  block.kind === 'heading' || block.kind === 'page' || block.kind === 'beside' || block.kind === 'care';

/** Every heading of the third level in one part with what stands under it. */
function sections(blocks: Block[]): string {
  const parts: Block[][] = [];
  for (const block of blocks) {
    if (begins(block) || parts.length === 0) parts.push([block]);
    else parts.at(-1)!.push(block);
  }
  return parts
    .map((part) => {
      const written = part.map(write).join('');
      const [first] = part;
      if (first!.kind !== 'heading' || first!.level !== 3) return written;
      return `<section${isHalf(part) ? ' class="half"' : ''}>${written}</section>`;
    })
    .join('');
}

/** The job sheet as one page for the screen: it stands by itself, has no scripts, and fetches nothing. */
export function jobSheetHtml({ title, kind, paper, tall, blocks }: JobSheet): string {
  const name = escapeText(title);
  const size = paper === 'tabloid' ? '11in 17in' : paper;
  return htmlPage(
    `${name}: job sheet`,
    styleOf(size),
    [
      `<header><div class="head"><h1>${name}</h1><div class="kind">${set(kind)}</div></div></header>`,
      `<main>${sections(blocks)}</main>`,
    ],
    tall ? 'tall' : 'wide',
  );
}
