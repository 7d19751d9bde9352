import type { Issue } from '../../issue.ts';
import type { System } from '../../units/index.ts';
import type { Wishes } from '../shape/shape.ts';

/** What a flight of stairs needs, and what has no meaning for it. */
export function checkStairs(_wishes: Wishes, _system: System): Issue[] {
  return [];
}
