import { bytesOf } from '../units/data-address.ts';
import { FACE } from './face.ts';
import { type LabelPlace, type Lettering, lettering } from './lettering.ts';

export { CAPITAL, LabelError, type LabelPlace, type Lettering } from './lettering.ts';

let loading: Promise<Lettering> | undefined;

/** The lettering of every label, loaded once, on first use. */
export function loadLettering(): Promise<Lettering> {
  loading ??= import('opentype.js/dist/opentype.mjs').then(({ parse }) =>
    lettering(parse(bytesOf(FACE).buffer) as unknown as Parameters<typeof lettering>[0]),
  );
  return loading;
}

/**
 * Text as an outline, as the `d` of one path: no font is needed to show it and nothing can be substituted.
 * A fraction such as `3/8` is set as a fraction, and `'` and `"` after a figure as primes.
 * @throws LabelError when the face lacks a character
 */
export async function labelPath(text: string, place: LabelPlace): Promise<string> {
  return (await loadLettering()).path(text, place);
}

/** How wide the text comes out, mm. */
export async function labelWidth(text: string, size: number): Promise<number> {
  return (await loadLettering()).width(text, size);
}
