import svgpath from 'svgpath';

export type Files = Map<string, string | Uint8Array>;

/** The same files with one text changed. Fails when nothing changes, so that no tampering is idle. */
export function change(files: Files, name: string, edit: (text: string) => string): Files {
  const before = files.get(name);
  if (typeof before !== 'string') throw new Error(`${name} is not there as text`);
  const after = edit(before);
  if (after === before) throw new Error(`${name} did not change`);
  return new Map(files).set(name, after);
}

/** layout.json with something changed in it. */
// biome-ignore lint/suspicious/noExplicitAny: the tests reach into the file as it is written
export const changeLayout = (files: Files, edit: (layout: any) => void): Files =>
  change(files, 'layout.json', (text) => {
    const layout = JSON.parse(text);
    edit(layout);
    return JSON.stringify(layout);
  });

export const without = (files: Files, name: string): Files => {
  const rest = new Map(files);
  if (!rest.delete(name)) throw new Error(`${name} is not there`);
  return rest;
};

/** The same path from point to point: every subpath begins where its own numbers say, and every handle is written out. */
export const absolute = (d: string): string => svgpath(d).abs().unshort().round(4).toString();

/** Changes the path text of the `nth` path whose tag holds `mark`; it is given in absolute numbers. */
export function changePath(svg: string, mark: string, edit: (d: string) => string, nth = 0): string {
  let seen = -1;
  return svg.replace(/<path\b[^>]*>/g, (tag) => {
    if (!tag.includes(mark)) return tag;
    seen += 1;
    return seen === nth ? tag.replace(/(\sd=")([^"]*)"/, (_, before, d) => `${before}${edit(absolute(d))}"`) : tag;
  });
}

/** Changes one subpath of absolute text, given as segments; `undefined` takes it out. */
export function changeSubpath(d: string, index: number, edit: (segments: Segment[]) => Segment[] | undefined): string {
  const parts = d.split(/(?=M)/);
  const path = svgpath(parts.at(index)!).abs() as ReturnType<typeof svgpath> & { segments: Segment[] };
  const edited = edit(asLines(path.segments));
  parts[(index + parts.length) % parts.length] = edited
    ? edited.map(([command, ...v]) => command + v.join(' ')).join('')
    : '';
  return parts.join('');
}

export type Segment = [command: string, ...numbers: number[]];

/** Moves the end of one segment. */
export const moveCorner = (d: string, dx: number, dy: number, subpath = 0, segment = 1): string =>
  changeSubpath(d, subpath, (segments) => {
    const [command, ...v] = segments[segment]!;
    segments[segment] = [command, ...v.slice(0, -2), v.at(-2)! + dx, v.at(-1)! + dy];
    return segments;
  });

/** Moves a whole subpath. */
export const moveSubpath = (d: string, dx: number, dy: number, subpath = 0): string =>
  changeSubpath(d, subpath, (segments) =>
    segments.map(([command, ...v]) => [command, ...v.map((value, i) => value + (i % 2 === 0 ? dx : dy))]),
  );

/** H and V as L, so that both coordinates stand in every segment. */
function asLines(segments: Segment[]): Segment[] {
  let [x, y] = [0, 0];
  return segments.map(([command, ...v]): Segment => {
    if (command === 'H') x = v[0]!;
    else if (command === 'V') y = v[0]!;
    else if (v.length >= 2) [x, y] = [v.at(-2)!, v.at(-1)!];
    return command === 'H' || command === 'V' ? ['L', x, y] : [command, ...v];
  });
}

/** Changes one field of one row of marks.csv, the header being row 0. */
export function changeMark(csv: string, pick: (row: string) => boolean, edit: (row: string) => string): string {
  let done = false;
  return csv
    .split(/(?<=\n)/)
    .map((row) => {
      if (done || !pick(row)) return row;
      done = true;
      return edit(row);
    })
    .join('');
}
