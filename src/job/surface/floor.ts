import type { Issue } from '../../issue.ts';
import type { System } from '../../units/index.ts';
import type { Wishes } from '../shape/shape.ts';

/** What a whole floor needs, and what has no meaning for it. */
export function checkFloor(_wishes: Wishes, _system: System): Issue[] {
  return [];
}
