import { shortMm } from './number.ts';

const ENTITIES: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

/** Characters that neither XML nor HTML may hold, whatever a title was pasted from. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const FORBIDDEN = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f\ufffe\uffff]|\p{Surrogate}/gu;

/** Nothing to leave out or to write otherwise, as in the outlines of a large drawing: told much sooner. */
const PLAIN = /^[ !#$%(-;=?-~]*$/;

/** Text that is safe between tags and inside a quoted attribute, in SVG and in HTML. */
export const escapeText = (text: string): string =>
  PLAIN.test(text) ? text : text.replace(FORBIDDEN, '').replace(/[&<>"']/g, (character) => ENTITIES[character]!);

export type Attributes = Record<string, string | number | undefined>;

const shown = (value: string | number): string => (typeof value === 'number' ? shortMm(value) : escapeText(value));

/** One element. Attributes left undefined are left out, numbers are written to a thousandth, as `.2`. Content is put in as it is; without any, the element is closed at once. */
export function element(name: string, attributes: Attributes, content?: string): string {
  const given = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${shown(value!)}"`)
    .join('');
  return content === undefined ? `<${name}${given}/>` : `<${name}${given}>${content}</${name}>`;
}

/**
 * A drawing at true size, SVG 1.1: one user unit a millimetre from its left top corner.
 * `width` and `height` as they are to be written, with a nought before the point: importers find the size by patterns of their own.
 */
export function trueSizePage(width: string, height: string, content: string[]): string {
  const head = {
    xmlns: 'http://www.w3.org/2000/svg',
    version: '1.1',
    width: `${width}mm`,
    height: `${height}mm`,
    viewBox: `0 0 ${width} ${height}`,
  };
  return `${element('svg', head, `\n${content.join('\n')}\n`)}\n`;
}
