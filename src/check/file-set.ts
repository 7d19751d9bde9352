import { type LayoutFile, readLayout, type SheetEntry } from './read/layout.ts';
import { type MarkRow, readMarks } from './read/marks.ts';
import { type Plan, readPlan } from './read/plan.ts';
import { type Read, reading, refuse } from './read/read.ts';
import { readStencil, type Stencil } from './read/stencil.ts';
import { readTemplate, type Template } from './read/template.ts';
import { readText } from './read/text.ts';

export interface Sheet {
  entry: SheetEntry;
  drawn: Read<Stencil>;
}

/** The written files of one job. Each is read once, when a claim first asks for it. */
export interface FileSet {
  /** Names of all files, sorted. */
  names: string[];
  content(name: string): string | Uint8Array | undefined;
  text(name: string): Read<string>;
  layout(): Read<LayoutFile>;
  plan(): Read<Plan>;
  marks(): Read<MarkRow[]>;
  template(): Read<Template>;
  /** The sheets that layout.json lists; none where it cannot be read. */
  sheets(): Sheet[];
}

export function fileSet(files: ReadonlyMap<string, string | Uint8Array>): FileSet {
  const text = (name: string): Read<string> => {
    const content = files.get(name);
    return content === undefined ? refuse(`${name} is missing`) : reading(() => readText(name, content));
  };
  const from = <T>(name: string, reader: (text: string) => Read<T>): Read<T> => {
    const found = text(name);
    return found.ok ? reading(() => reader(found.value)) : found;
  };
  const layout = once(() => from('layout.json', readLayout));
  return {
    names: [...files.keys()].sort(),
    content: (name) => files.get(name),
    text,
    layout,
    plan: once(() => from('plan.svg', readPlan)),
    marks: once(() => from('marks.csv', readMarks)),
    template: once(() => from('template.svg', readTemplate)),
    sheets: once(() => {
      const found = layout();
      return found.ok ? found.value.sheets.map((entry) => ({ entry, drawn: from(entry.file, readStencil) })) : [];
    }),
  };
}

function once<T>(make: () => T): () => T {
  let made: { value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
