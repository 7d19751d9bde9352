import type { Atom } from './atom.ts';
import { BREAK, type Flowing } from './blocks.ts';

/** A piece of the sheet and where it stands on its page, mm under the head of the page. */
export interface Placed {
  atom: Atom;
  top: number;
}

/** Room for the least that may stand at the foot of a page: what is kept together, and the least of what comes after. */
function needs(queue: readonly Flowing[], at: number): number {
  let need = 0;
  for (let n = at; n < queue.length; n++) {
    const atom = queue[n]!;
    if (atom === BREAK) break;
    need += (n === at ? 0 : atom.space) + (atom.keep ? atom.height : atom.least);
    if (!atom.keep) break;
  }
  return need;
}

const SLACK = 1e-6;

/**
 * Pieces one under the other, page after page. What is to be kept with the next stands on its page, tables go apart between rows.
 * @param rooms height of the first page and of every other, mm
 */
export function flow(atoms: readonly Flowing[], rooms: { first: number; other: number }): Placed[][] {
  const pages: Placed[][] = [[]];
  const queue = [...atoms];
  let y = 0;
  const turn = () => {
    if (pages.at(-1)!.length === 0) return;
    pages.push([]);
    y = 0;
  };
  for (let at = 0; at < queue.length; at++) {
    const atom = queue[at]!;
    if (atom === BREAK) {
      turn();
      continue;
    }
    const room = pages.length === 1 ? rooms.first : rooms.other;
    const page = pages.at(-1)!;
    const space = page.length === 0 ? 0 : atom.space;
    const left = room - y - space + SLACK;
    const put = (one: Atom) => {
      page.push({ atom: one, top: y + space });
      y += space + one.height;
    };
    if (needs(queue, at) <= left && atom.height <= left) {
      put(atom);
      continue;
    }
    const parts = needs(queue, at) <= left ? atom.split?.(left) : undefined;
    if (parts) {
      put(parts[0]);
      queue[at] = parts[1];
      turn();
      at--;
      continue;
    }
    const smaller = atom.fit?.(left);
    if (smaller) {
      put(smaller);
      continue;
    }
    if (page.length > 0) {
      turn();
      at--;
      continue;
    }
    // Nothing else stands on the page, so there is no better place.
    put(atom);
  }
  return pages.filter((page) => page.length > 0);
}
