import { MOST_BYTES } from './limits.ts';
import { refuse } from './refusal.ts';

const PLAIN = 'save it again from the drawing program as plain SVG';

const REDRAW = 'redraw it as shapes, or have a drawing program trace it, and save that as SVG';
const CONVERT = 'open it in a drawing program and save it as SVG';

/** What a file is that is no SVG, for a word that helps more than "not well-formed": how it begins, what it is, what to do. */
const OTHERS: [begins: string[], what: string, hint: string][] = [
  [['\u001F\u008B', '\u001F\uFFFD'], 'a compressed SVG (.svgz)', `${PLAIN}, not compressed`],
  [['\u0089PNG', '\uFFFDPNG'], 'a PNG picture, made of dots', REDRAW],
  [['\u00FF\u00D8', '\uFFFD\uFFFD\uFFFD'], 'a JPEG picture, made of dots', REDRAW],
  [['GIF8'], 'a GIF picture, made of dots', REDRAW],
  [['%PDF'], 'a PDF', CONVERT],
  [['%!PS'], 'a PostScript drawing', CONVERT],
  [['<!doctype html', '<html'], 'a web page', 'save the drawing itself, not the page it is shown on'],
];

/** The file's text without its byte order mark, or a refusal: too large, no text, or something other than an SVG. */
export function checkText(given: string): string {
  const text = given.charCodeAt(0) === 0xfeff ? given.slice(1) : given;
  const bytes = text.length > MOST_BYTES ? text.length : new TextEncoder().encode(text).length;
  if (bytes > MOST_BYTES) {
    refuse(
      'too-large',
      `the drawing is ${(bytes / 1e6).toFixed(1)} MB; at most ${MOST_BYTES / 1e6} MB is read`,
      'simplify the drawing, or leave out pictures that are embedded in it',
    );
  }
  if (text.trim() === '') refuse('empty-file', 'the file is empty', PLAIN);
  const head = text.slice(0, 1000).trimStart();
  for (const [begins, what, hint] of OTHERS) {
    if (begins.some((one) => head.slice(0, one.length).toLowerCase() === one.toLowerCase()))
      refuse('not-svg', `the file is ${what}; only SVG drawings are read`, hint);
  }
  if (text.includes('\0')) {
    refuse('not-text', 'the file is no text in UTF-8: it holds zero bytes', `${PLAIN}, in UTF-8`);
  }
  return text;
}

/** The text of a file from its bytes: UTF-8, or UTF-16 that says so by its byte order mark. */
export function drawingText(bytes: Uint8Array): string {
  const encoding =
    bytes[0] === 0xff && bytes[1] === 0xfe ? 'utf-16le' : bytes[0] === 0xfe && bytes[1] === 0xff ? 'utf-16be' : 'utf-8';
  return new TextDecoder(encoding).decode(bytes);
}
