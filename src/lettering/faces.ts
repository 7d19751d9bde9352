import { fail, type Result } from '../issue.ts';
import { type Face, openFace } from './face.ts';

/** Reads a file that a job names. Issues say what is wrong with it. */
export type ReadFile = (path: string) => Promise<Result<Uint8Array>>;

/** Finds the face that lettering names, or the one that comes with the tool. */
export type FindFace = (font?: string) => Promise<Result<Face>>;

const cannotRead: ReadFile = async (path) =>
  fail(
    'lettering/no-files',
    ['font'],
    `the font ${path} cannot be read here`,
    'leave `font` out, for the face that comes along',
  );

/** The face that comes with the tool, once it was asked for. */
let house: Promise<Result<Face>> | undefined;

/** Faces by the bytes of their files, which nobody changes: work is lettered anew with every letter typed. */
const opened = new WeakMap<Uint8Array, Promise<Result<Face>>>();

function keptFace(bytes: Uint8Array): Promise<Result<Face>> {
  const face = opened.get(bytes) ?? openFace(bytes);
  opened.set(bytes, face);
  return face;
}

/** Opens every font once, however many lines are set in it. Adds `font` to the path of what is wrong with a file. */
export function faceFinder(read: ReadFile = cannotRead): FindFace {
  const open = async (font: string | undefined): Promise<Result<Face>> => {
    if (font === undefined) {
      house ??= openFace();
      return house;
    }
    const bytes = await read(font);
    if (bytes.ok) return keptFace(bytes.value);
    return { ok: false, issues: bytes.issues.map((issue) => ({ ...issue, path: ['font'] })) };
  };
  const known = new Map<string | undefined, Promise<Result<Face>>>();
  return (font) => {
    const found = known.get(font) ?? open(font);
    known.set(font, found);
    return found;
  };
}
