import { unpacked } from '../engine/unpacked.ts';

/** A package that something in the page comes from; `text` is the place of its licence in `texts`. */
export interface MadeOf {
  parts: { name: string; version: string; licence: string; text: number }[];
  texts: string[];
}

/** What the build has put at the end of the page (see `vite.page.config.ts`); nothing in a page that was not built. */
export async function readMadeOf(): Promise<MadeOf | undefined> {
  const packed = document.getElementById('made-of')?.textContent;
  return packed ? JSON.parse(await (await unpacked(packed)).text()) : undefined;
}
