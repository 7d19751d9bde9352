import type { Issue } from '../issue.ts';
import { PARTS } from '../motif/motif.ts';
import { nearestName } from '../motif/nearest.ts';
import { shown } from '../units/index.ts';
import { PALETTE } from './colours.ts';
import { plainName } from './name.ts';
import type { Wishes } from './shape/shape.ts';

const NAME = /^\p{Script=Latin}[\p{Script=Latin}0-9 -]{0,29}$/u;

/** Names in the palette, and names given to parts. `whole` is false when a colour of the palette was already refused. */
export function checkColours({ palette, colours, colourways, paint }: Wishes, whole: boolean): Issue[] {
  const issues: Issue[] = [];
  const names = Object.keys(palette ?? PALETTE);
  const files = new Map<string, string>();
  for (const name of names) {
    const path = ['palette', name];
    const file = plainName(name);
    if (!NAME.test(name) || file === undefined) {
      issues.push({
        code: 'job/colour-name',
        path,
        says: `${shown(name)} cannot name a colour; a name begins with a letter of a to z and has letters, digits, spaces and hyphens, at most 30`,
        hint: file?.replace(/^[\d-]+/, '').slice(0, 30) || 'navy',
      });
    } else if (files.has(file)) {
      issues.push({
        code: 'job/colour-name',
        path,
        says: `${shown(name)} and ${files.get(file)} would be written to files of the same name`,
        hint: `${file}-2`,
      });
    } else files.set(file, name);
  }
  if (palette && whole && names.length < 2)
    issues.push({
      code: 'job/palette',
      path: ['palette'],
      says: 'a palette has two colours or more: the ground and the pattern',
      hint: `palette: { cream: '#efe4cc', navy: '#22384f' }`,
    });
  if (!whole) return issues;
  // A name that was refused may be used all the same, but is not offered.
  const offered = [...files.values()];
  issues.push(...unknownNames(colours, ['colours'], names, offered));
  for (const [at, one] of (colourways ?? []).entries())
    issues.push(...unknownNames(one.colours, ['colourways', at, 'colours'], names, offered));
  const ways = (colourways ?? []).map(({ name }) => name.toLowerCase());
  for (const [at, name] of ways.entries())
    if (ways.indexOf(name) < at)
      issues.push({
        code: 'job/colourway-twice',
        path: ['colourways', at, 'name'],
        says: `a colourway called ${shown(colourways![at]!.name)} stands above already`,
        hint: 'another name',
      });
  const told: [string, string][] = [
    ...Object.keys(paint?.onHand ?? {})
      .filter((name) => name !== 'primer' && name !== 'clear coats')
      .map((name): [string, string] => ['on hand', name]),
    ...Object.keys(paint?.colours ?? {}).map((name): [string, string] => ['colours', name]),
  ];
  for (const [key, name] of told) if (!names.includes(name)) issues.push(unknown(name, ['paint', key, name], offered));
  return issues;
}

const unknown = (name: string, path: Issue['path'], names: readonly string[]): Issue => ({
  code: 'job/colour-unknown',
  path,
  says: `${shown(name)} is not in the palette${names.length === 0 ? '' : `, which has ${names.join(', ')}`}`,
  hint: nearestName(name, names) ?? names[0] ?? 'a colour of the palette',
});

/** Names of colours that parts are given and the palette does not have. */
const unknownNames = (
  colours: Wishes['colours'],
  path: Issue['path'],
  names: readonly string[],
  offered: readonly string[],
): Issue[] =>
  PARTS.flatMap((part): Issue[] => {
    const name = colours?.[part];
    return name === undefined || names.includes(name) ? [] : [unknown(name, [...path, part], offered)];
  });
