/** What a key does on the plan. */
export type Doing =
  | { does: 'zoom'; factor: number }
  | { does: 'whole' }
  | { does: 'go'; across: number; along: number; fine: boolean }
  | { does: 'set' }
  | { does: 'stop' };

export const STEP = 1.5;

const WAYS: Record<string, readonly [number, number]> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** Keys that other programs of the computer listen to are left alone. */
export function doingOf({
  key,
  shiftKey,
  ctrlKey,
  altKey,
  metaKey,
}: Pick<KeyboardEvent, 'key' | 'shiftKey' | 'ctrlKey' | 'altKey' | 'metaKey'>): Doing | undefined {
  if (ctrlKey || altKey || metaKey) return undefined;
  const go = WAYS[key];
  if (go) return { does: 'go', across: go[0], along: go[1], fine: shiftKey };
  switch (key) {
    case '+':
    case '=':
      return { does: 'zoom', factor: STEP };
    case '-':
    case '−':
    case '_':
      return { does: 'zoom', factor: 1 / STEP };
    case '0':
      return { does: 'whole' };
    case 'Enter':
      return { does: 'set' };
    case 'Escape':
      return { does: 'stop' };
    default:
      return undefined;
  }
}
