import { type LayoutFile, readLayout, type SheetEntry } from './read/layout.ts';
import { type MarkRow, readMarks } from './read/marks.ts';
import { type Plan, readPlan } from './read/plan.ts';
import { type Read, reading, refuse } from './read/read.ts';
import { readStencil, type Stencil } from './read/stencil.ts';
import { readSvg, type Svg } from './read/svg.ts';
import { readTemplate, type Template } from './read/template.ts';
import { readText } from './read/text.ts';

export interface Sheet {
  entry: SheetEntry;
  drawn: Read<Stencil>;
}

export type Content = string | Uint8Array;

/** The written files of one job. Each is read once by each reader, when a claim first asks for it. */
export interface FileSet {
  /** Names of all files, sorted. */
  readonly names: string[];
  content(name: string): Content | undefined;
  text(name: string): Read<string>;
  /** What a reader makes of a file of text. */
  read<T>(name: string, reader: (text: string) => Read<T>): Read<T>;
  /** What a reader makes of an SVG. */
  drawn<T>(name: string, reader: (svg: Svg) => Read<T>): Read<T>;
  /** What a reader makes of a file that is no text; nothing where there is none. */
  bytes<T>(name: string, reader: (bytes: Uint8Array) => Promise<Read<T>>): Promise<Read<T>> | undefined;
  layout(): Read<LayoutFile>;
  plan(): Read<Plan>;
  marks(): Read<MarkRow[]>;
  template(): Read<Template>;
  /** The sheets that layout.json lists; none where it cannot be read. */
  sheets(): Sheet[];
}

/** What readers made of a file. */
type Made = Map<unknown, unknown>;

const madeIn = new WeakMap<FileSet, (name: string) => Made>();

/**
 * @param files  name to content
 * @param before another set: a file that is the same in both is not read again
 */
export function fileSet(files: ReadonlyMap<string, Content>, before?: FileSet): FileSet {
  const known = new Map<string, Made>();
  const madeOf = (name: string): Made => {
    const isSame = before !== undefined && before.content(name) === files.get(name);
    const made = known.get(name) ?? (isSame ? madeIn.get(before)!(name) : new Map());
    known.set(name, made);
    return made;
  };
  const once = <T>(name: string, reader: unknown, make: (content: Content) => T): T | undefined => {
    const content = files.get(name);
    if (content === undefined) return undefined;
    const made = madeOf(name);
    if (!made.has(reader)) made.set(reader, make(content));
    return made.get(reader) as T;
  };
  const text = (name: string): Read<string> =>
    once(name, readText, (content) => reading(() => readText(name, content))) ?? refuse(`${name} is missing`);
  const then = <A, B>(found: Read<A>, reader: (value: A) => Read<B>): Read<B> =>
    found.ok ? reading(() => reader(found.value)) : found;
  const read = <T>(name: string, reader: (text: string) => Read<T>): Read<T> =>
    once(name, reader, () => then(text(name), reader)) ?? refuse(`${name} is missing`);
  const drawn = <T>(name: string, reader: (svg: Svg) => Read<T>): Read<T> =>
    once(name, reader, () => then(read(name, readSvg), reader)) ?? refuse(`${name} is missing`);
  const layout = () => read('layout.json', readLayout);
  const set: FileSet = {
    get names() {
      return [...files.keys()].sort();
    },
    content: (name) => files.get(name),
    text,
    read,
    drawn,
    bytes: (name, reader) =>
      once(name, reader, (content) => (content instanceof Uint8Array ? reader(content) : undefined)),
    layout,
    plan: () => drawn('plan.svg', readPlan),
    marks: () => read('marks.csv', readMarks),
    template: () => drawn('template.svg', readTemplate),
    sheets: () => {
      const found = layout();
      return found.ok ? found.value.sheets.map((entry) => ({ entry, drawn: drawn(entry.file, readStencil) })) : [];
    },
  };
  madeIn.set(set, madeOf);
  return set;
}
