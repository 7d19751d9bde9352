import { type Read, read, refuse } from './read.ts';

const NAMED: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'", nbsp: ' ' };

/** The words of an HTML page, as a person reads them: scripts, styles and tags left out, named and numbered characters put in. */
export function readPage(text: string): Read<string> {
  if (!/^\s*<!doctype html>/i.test(text.slice(0, 200))) return refuse('the file is not an HTML page');
  if (!/<\/html>\s*$/i.test(text.slice(-200))) return refuse('the page has no end');
  const shown = withoutScripts(text);
  if (shown === undefined) return refuse('a script or style of the page has no end');
  const words = shown
    .replace(/<[^<>]*>/g, ' ')
    .replace(/&(?:#(\d{1,7})|#x([0-9a-f]{1,6})|(\w{1,10}));/gi, (all, decimal, hex, name) => {
      const code = decimal ? Number(decimal) : hex ? Number.parseInt(hex, 16) : undefined;
      if (code !== undefined) return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : ' ';
      return NAMED[String(name).toLowerCase()] ?? all;
    });
  return read(words.replace(/\s+/g, ' '));
}

function withoutScripts(text: string): string | undefined {
  const kept: string[] = [];
  const begins = /<(script|style)\b/gi;
  let from = 0;
  for (let found = begins.exec(text); found; found = begins.exec(text)) {
    kept.push(text.slice(from, found.index));
    const ends = found[1]!.toLowerCase() === 'script' ? /<\/script>/gi : /<\/style>/gi;
    ends.lastIndex = found.index;
    if (ends.exec(text) === null) return undefined;
    from = ends.lastIndex;
    begins.lastIndex = from;
  }
  kept.push(text.slice(from));
  return kept.join(' ');
}
