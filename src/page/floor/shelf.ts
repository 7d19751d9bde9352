import type { Shelf } from './kept.ts';

function inMemory(): Shelf {
  const kept = new Map<string, string>();
  return {
    getItem: (key) => kept.get(key) ?? null,
    setItem: (key, value) => void kept.set(key, value),
    removeItem: (key) => void kept.delete(key),
  };
}

/** The store of this browser; one that ends with the page where the browser gives none. */
function openShelf(): { shelf: Shelf; outlives: boolean } {
  try {
    const test = 'evenfield-test';
    localStorage.setItem(test, test);
    localStorage.removeItem(test);
    return { shelf: localStorage, outlives: true };
  } catch {
    return { shelf: inMemory(), outlives: false };
  }
}

export const { shelf, outlives } = openShelf();
