import { type Motif, PLAIN } from '../motif/motif.ts';
import { isBranch, type Tree } from './tree.ts';

/** A motif that is the person's own drawing is named by the path of its file. */
const DRAWING = /\.svg$/i;

export const isDrawing = (name: string): boolean => DRAWING.test(name);

function nameIn(tree: Tree | undefined): string[] {
  if (typeof tree === 'string') return [tree];
  if (!isBranch(tree)) return [];
  return [...nameIn(tree.name), ...nameIn(tree.motif), ...nameIn(tree.with)];
}

const standIns = new Map<string, Motif>();
const MOST = 50;

/** Stands for a drawing until its file has been read, so that the rest of the job can be. The same one for the same name. */
function standIn(name: string): Motif {
  const known = standIns.get(name);
  if (known) return known;
  const made: Motif = {
    name,
    kind: 'field',
    summary: 'a drawing of your own',
    parameters: {},
    ratio: 1,
    lines: { across: PLAIN, along: PLAIN },
    made: 'sheet',
    draw() {},
  };
  if (standIns.size >= MOST) standIns.clear();
  standIns.set(name, made);
  return made;
}

/** The drawings that a job names for its field. */
export function drawingsIn(tree: Tree): Motif[] {
  const field = isBranch(tree) ? tree.field : undefined;
  if (!isBranch(field)) return [];
  const names = [field.motif, field.alternate, field.inset].flatMap(nameIn).filter(isDrawing);
  return [...new Set(names)].map(standIn);
}
