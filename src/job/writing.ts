import { MM_PER_INCH, parseLength, type System, systemOf, type Unit, writeLength } from '../units/index.ts';
import { STEP } from './defaults.ts';
import { isBranch, type Tree } from './tree.ts';

/** How the lengths of a job are written back. */
export interface Writing {
  units: Unit;
  system: System;
  /** The tape's finest mark, mm. */
  step: number;
}

/** What may look like a length and is none, and a section in which small lengths are often metric. */
const NO_LENGTHS = ['title', 'text', 'font', 'stencil', 'print'];

/** The unit of the first length with one, in the order of the file. */
function firstUnit(tree: Tree): Unit | undefined {
  if (typeof tree === 'string') {
    for (const end of tree.split(/\s+to\s+/i)) {
      const read = parseLength(end);
      if (read.ok && read.unit) return read.unit;
    }
    return undefined;
  }
  const parts = isBranch(tree)
    ? Object.entries(tree)
        .filter(([key]) => !NO_LENGTHS.includes(key))
        .map(([, part]) => part)
    : (tree ?? []);
  for (const part of parts) {
    const unit = firstUnit(part);
    if (unit) return unit;
  }
  return undefined;
}

const PARTS_OF_INCH = [1, 2, 4, 8, 16, 32, 64];
const MILLIMETRES = [0.5, 1, 2, 5, 10];

/** Whether a tape is marked like this: in parts of an inch, or in millimetres. */
export function isTapeStep(mm: number, system: System): boolean {
  const steps = system === 'inch' ? PARTS_OF_INCH.map((parts) => MM_PER_INCH / parts) : MILLIMETRES;
  return steps.some((step) => Math.abs(step - mm) < 1e-6);
}

/** Units as stated, otherwise those of the first length written; inches where there is none. */
export function writingOf(tree: Tree, units: Unit | undefined, tape: number | undefined): Writing {
  const settled = units ?? firstUnit(tree) ?? 'in';
  const system = systemOf(settled);
  const step = tape !== undefined && isTapeStep(tape, system) ? tape : STEP[system];
  return { units: settled, system, step };
}

export const writeIn = ({ units, step }: Writing, mm: number): string => writeLength(mm, units, step);
