import type { Issue } from '../issue.ts';
import { shown } from '../units/index.ts';
import { exampleAt, keysAt } from './outline.ts';
import type { JsonSchema } from './schema.ts';
import { isBranch, type Path, type Tree } from './tree.ts';

/** Keys with nothing after them: one issue each. Unknown keys are left to be reported as such. */
export function findEmpty(tree: Tree, schema: () => JsonSchema, path: Path = []): Issue[] {
  if (Array.isArray(tree)) return tree.flatMap((part, at) => findEmpty(part, schema, [...path, at]));
  if (!isBranch(tree)) return [];
  return Object.entries(tree).flatMap(([key, value]) => {
    const here = [...path, key];
    if (value !== null) return findEmpty(value, schema, here);
    const inPalette = path[0] === 'palette';
    return inPalette || keysAt(schema(), path).includes(key) ? [emptyIssue(here, inPalette, schema())] : [];
  });
}

function emptyIssue(path: Path, inPalette: boolean, schema: JsonSchema): Issue {
  const key = shown(String(path.at(-1)));
  const says = `nothing stands after ${key}:`;
  if (inPalette)
    return {
      code: 'job/no-value',
      path,
      says: `${says} a colour needs quotes round it, because # begins a comment`,
      hint: `${key}: '#22384f'`,
    };
  return {
    code: 'job/no-value',
    path,
    says: `${says.slice(0, -1)}`,
    hint: `${key}: ${exampleAt(schema, path) ?? '…'}, or leave the line out`,
  };
}
