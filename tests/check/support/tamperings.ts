import {
  change,
  changeLayout,
  changeMark,
  changePath,
  changeSubpath,
  type Files,
  moveCorner,
  moveSubpath,
  without,
} from './tamper.ts';

/** One thing changed in one file, and the claim that must be refuted by it. */
export interface Tampering {
  name: string;
  claim: RegExp;
  /** The file that the refuted claim is about. */
  file: string;
  tamper: (files: Files) => Files;
}

const PLAN = 'plan.svg';
const MARKS = 'marks.csv';
const LAYOUT = 'layout.json';
const FIELD = 'data-element="field"';

const scaleNumbers = (text: string, by: number): string =>
  text.replace(/-?(?:\d*\.)?\d+/g, (number) => String(Number(number) * by));
/** The fields of a row as they stand there, quotes and line end included. */
const fields = (row: string): string[] =>
  row
    .match(/("(?:[^"]|"")*"|[^,"])*(?:,|$)/g)!
    .slice(0, 6)
    .map((one) => one.replace(/,$/, ''));

/** What can be done to the drawings of any work with a field of whole pieces and at least one sheet with keys. */
export function drawingTamperings(sheet: string): Tampering[] {
  const inPlan = (name: string, claim: RegExp, edit: (svg: string) => string): Tampering => ({
    name: `plan.svg: ${name}`,
    claim,
    file: PLAN,
    tamper: (files) => change(files, PLAN, edit),
  });
  const onSheet = (name: string, claim: RegExp, edit: (svg: string) => string, file = sheet): Tampering => ({
    name: `${sheet}: ${name}`,
    claim,
    file,
    tamper: (files) => change(files, sheet, edit),
  });
  const element = (mark: string, edit: (d: string) => string) => (svg: string) => changePath(svg, mark, edit);
  return [
    inPlan(
      'a corner of the field 0.2 mm aside',
      /^the field mirrors about the centre line along$/,
      element(FIELD, (d) => moveCorner(d, 0.2, 0)),
    ),
    inPlan(
      'a corner of the field 0.2 mm onward',
      /^the field mirrors about the centre line across$/,
      element(FIELD, (d) => moveCorner(d, 0, 0.2)),
    ),
    inPlan(
      'a corner of the field moved, seen by its sheet',
      /^every piece of the plan is painted through a window$/,
      element(FIELD, (d) => moveCorner(d, 0.2, 0)),
    ),
    inPlan(
      'a piece of the field gone',
      /^the field mirrors about the centre line/,
      element(FIELD, (d) => changeSubpath(d, 0, () => undefined)),
    ),
    inPlan(
      'a piece of the field gone, seen by the pitch',
      /^pieces repeat at the pitch, (across|along)$/,
      element(FIELD, (d) => changeSubpath(d, 1, () => undefined)),
    ),
    inPlan(
      'a piece painted twice',
      /^every piece of the plan is painted through a window$/,
      element(FIELD, (d) => d + d.split(/(?=M)/)[0]),
    ),
    inPlan(
      'a whole piece moved out of the field',
      /^the field keeps inside its edges$/,
      element(FIELD, (d) => moveSubpath(d, -500, 0)),
    ),
    inPlan(
      'a piece moved half way to the next',
      /^repeats land \w+ at the left edge$/,
      element(FIELD, (d) => moveSubpath(d, -3, 0)),
    ),
    inPlan(
      'the ground 1 mm wider',
      /^the work is as large as the layout says/,
      element('id="ground"', (d) => scaleNumbers(d, 1.002)),
    ),
    inPlan(
      'the ground 1 mm wider, seen by the strips',
      /^the field lies evenly inside the work$/,
      element('id="ground"', (d) => moveCorner(d, 0, -0.3)),
    ),
    inPlan(
      'a path left open',
      /^every path of the plan is closed$/,
      element(FIELD, (d) => d.replace(/z(?=[^z]*$)/i, '')),
    ),
    inPlan('another viewBox', /^the plan is true to size$/, (svg) =>
      svg.replace(/viewBox="[^"]*"/, (box) => scaleNumbers(box, 1.01)),
    ),
    inPlan('width and height 99 %', /^the plan is true to size$/, (svg) =>
      svg.replace(/ (width|height)="[^"]*"/g, (size) => scaleNumbers(size, 0.99)).replace('viewBox', 'viewBox'),
    ),
    inPlan('width in another unit', /^the plan is true to size$/, (svg) =>
      svg.replace(/ width="([\d.]+)mm"/, ' width="$1cm"'),
    ),
    inPlan('width without a unit', /^the plan is true to size$/, (svg) =>
      svg.replace(/ width="([\d.]+)mm"/, ' width="$1"'),
    ),
    inPlan('a viewBox beside the work', /^the plan shows the whole work$/, (svg) =>
      svg.replace(/viewBox="(-?[\d.]+) /, (_, x) => `viewBox="${Number(x) + 500} `),
    ),
    inPlan('all paint drawn at 99 %', /^pieces repeat at the pitch, across$/, (svg) => scalePaint(svg, 0.99)),
    inPlan('a colour changed', /^every part has its own colour$/, (svg) =>
      svg.replace(/<path[^>]*data-element="field"[^>]*>/, (tag) => tag.replace(/fill="#\w+"/, 'fill="#123456"')),
    ),
    inPlan('a length on the plan changed', /^the lengths on the plan are those of the work$/, (svg) =>
      changeLabel(svg, /^field /, (label) => label.replace(/\d+/, (n) => `${Number(n) + 1}`)),
    ),
    inPlan('the width not written', /^the plan is labelled with its size$/, (svg) =>
      changeLabel(svg, /^field .*/, () => 'field'),
    ),
    inPlan('a transform on the paint', /^the file is there and can be read$/, (svg) =>
      svg.replace('<g id="paint"', '<g id="paint" transform="scale(0.99)"'),
    ),
    onSheet(
      'a corner of a window 0.2 mm aside',
      /^every open window lies on one painted piece$/,
      element('id="window-1"', (d) => moveCorner(d, 0.2, 0)),
    ),
    onSheet(
      'a corner of a window 0.2 mm onward',
      /^every open window lies on one painted piece$/,
      element('id="window-1"', (d) => moveCorner(d, 0, 0.2)),
    ),
    onSheet('a window gone', /^the sheet has its windows$/, (svg) =>
      svg.replace(/<path\b[^>]*id="window-1"[^>]*>/, ''),
    ),
    onSheet(
      'a window gone, seen on the plan',
      /^every piece of the plan is painted through a window$/,
      (svg) => svg.replace(/<path\b[^>]*id="window-1"[^>]*>/, ''),
      PLAN,
    ),
    onSheet('a window twice', /^no two windows overlap$/, (svg) =>
      svg.replace(/<path\b[^>]*id="window-1"[^>]*>/, (tag) => tag + tag.replace('window-1"', 'window-9999"')),
    ),
    onSheet(
      'a window drawn twice in one path',
      /^no piece of the plan is painted twice$/,
      element('id="window-1"', (d) => moveSubpath(d, 0, 0) + moveSubpath(d, 0, 0)),
      PLAN,
    ),
    onSheet(
      'a window off the sheet',
      /^windows and keys lie on the sheet$/,
      element('id="window-1"', (d) => moveSubpath(d, -2000, 0)),
    ),
    onSheet(
      'a path left open',
      /^every path of the sheet is closed$/,
      element('id="window-1"', (d) => d.replace(/z\s*$/i, '')),
    ),
    onSheet('another viewBox', /^the sheet is true to size$/, (svg) =>
      svg.replace(/viewBox="[^"]*"/, (box) => scaleNumbers(box, 1.01)),
    ),
    onSheet('a viewBox that begins elsewhere', /^the sheet begins at its own corner$/, (svg) =>
      svg.replace('viewBox="0 0', 'viewBox="1 0'),
    ),
    onSheet(
      'drawn at 99 %',
      /^every open window lies on one painted piece$/,
      element('id="window-1"', (d) => scaleNumbers(d, 0.99)),
    ),
    onSheet('width in another unit', /^the sheet is true to size$/, (svg) =>
      svg.replace(/ width="([\d.]+)mm"/, ' width="$1pt"'),
    ),
    onSheet('a key gone', /^the sheet has its keys$/, (svg) => svg.replace(/<path\b[^>]*id="key-1"[^>]*>/, '')),
    onSheet('a key of another kind', /^every key is a guide key or a neighbour key$/, (svg) =>
      svg.replace(/data-key="\w+"/, 'data-key="hole"'),
    ),
  ];
}

/** Changes the first label of the dimensions that matches. */
function changeLabel(svg: string, pick: RegExp, edit: (label: string) => string): string {
  const from = svg.indexOf('<g id="dimensions"');
  let done = false;
  const labels = svg.slice(from).replace(/(data-label=")([^"]*)"/g, (all, before, label) => {
    if (done || !pick.test(label)) return all;
    done = true;
    return `${before}${edit(label)}"`;
  });
  return svg.slice(0, from) + labels;
}

/** Paint only: the numbers of every d in the group, the frame of the drawing left alone. */
const scalePaint = (svg: string, by: number): string =>
  svg.replace(/<path\b[^>]*data-element[^>]*>/g, (tag) => tag.replace(/ d="[^"]*"/, (d) => scaleNumbers(d, by)));

export function templateTamperings(): Tampering[] {
  const onTemplate = (name: string, claim: RegExp, edit: (svg: string) => string): Tampering => ({
    name: `template.svg: ${name}`,
    claim,
    file: 'template.svg',
    tamper: (files) => change(files, 'template.svg', edit),
  });
  return [
    onTemplate('a corner 0.2 mm aside', /^the template is one repeat of the plan$/, (svg) =>
      changePath(svg, 'data-part', (d) => moveCorner(d, 0.2, 0)),
    ),
    onTemplate('drawn at 99 %', /^the template is one repeat of the plan$/, (svg) =>
      changePath(svg, 'data-part', (d) => scaleNumbers(d, 0.99)),
    ),
    onTemplate('its edge moved', /^the template is one pitch each way$/, (svg) =>
      changePath(svg, 'data-line="repeat"', (d) => scaleNumbers(d, 0.99)),
    ),
    onTemplate('a notch 0.2 mm aside', /^notches point at the middles of its sides$/, (svg) =>
      changePath(svg, 'data-line="notch"', (d) => moveSubpath(d, 0.2, 0.2)),
    ),
    onTemplate('a notch gone', /^notches point at the middles of its sides$/, (svg) =>
      svg.replace(/<path\b[^>]*data-line="notch"[^>]*>/, ''),
    ),
    onTemplate('another viewBox', /^the template is true to size$/, (svg) =>
      svg.replace(/viewBox="[^"]*"/, (box) => scaleNumbers(box, 1.01)),
    ),
    onTemplate('a path left open', /^every path of the template is closed$/, (svg) =>
      changePath(svg, 'data-part', (d) => d.replace(/z\s*$/i, '')),
    ),
  ];
}

export function jobSheetTamperings(sheet: string): Tampering[] {
  const onPage = (name: string, claim: RegExp, edit: (html: string) => string): Tampering => ({
    name: `job-sheet.html: ${name}`,
    claim,
    file: 'job-sheet.html',
    tamper: (files) => change(files, 'job-sheet.html', edit),
  });
  return [
    onPage('a sheet not named', /^the job sheet names every sheet$/, (html) => html.replaceAll(sheet, 'a sheet')),
    onPage('another plan', /^the job sheet shows the paint of the plan$/, (html) =>
      changePath(html, FIELD, (d) => moveSubpath(d, 0.2, 0)),
    ),
    onPage('something fetched', /^the job sheet stands by itself$/, (html) =>
      html.replace('</body>', '<img src="https://example.org/a.png"></body>'),
    ),
    onPage('a script', /^the job sheet stands by itself$/, (html) =>
      html.replace('</body>', '<script>1</script></body>'),
    ),
  ];
}

export function keyTamperings(sheet: string, kind: 'guide' | 'neighbour'): Tampering[] {
  const claim =
    kind === 'guide'
      ? /^the point of every guide key lies on a guide line$/
      : /^every neighbour key shows a corner of a painted piece$/;
  const moved = (dx: number, dy: number): Tampering => ({
    name: `${sheet}: a ${kind} key ${dx}, ${dy} mm off`,
    claim,
    file: sheet,
    tamper: (files) =>
      change(files, sheet, (svg) => changePath(svg, `data-key="${kind}"`, (d) => moveSubpath(d, dx, dy))),
  });
  return [moved(0.2, 0.2), moved(-0.2, -0.2)];
}

export function markTamperings(step: (tape: string) => string): Tampering[] {
  const inMarks = (name: string, claim: RegExp, edit: (csv: string) => string): Tampering => ({
    name: `marks.csv: ${name}`,
    claim,
    file: MARKS,
    tamper: (files) => change(files, MARKS, edit),
  });
  const ofAxis = (number: number) => (row: string) => row.startsWith('axis,') && fields(row)[2] === String(number);
  const put = (row: string, at: number, value: string) => {
    const all = fields(row);
    all[at] = value;
    return all.join(',');
  };
  const inDrawing = (name: string, edit: (svg: string) => string): Tampering => ({
    name: `marks.svg: ${name}`,
    claim: /^every mark is drawn to the scale that is told$/,
    file: 'marks.svg',
    tamper: (files) => change(files, 'marks.svg', edit),
  });
  return [
    inDrawing('another scale beside a line', (svg) => svg.replace(/Scale 1:\d+/, 'Scale 1:7')),
    inDrawing('a piece of a band 1 mm longer', (svg) =>
      svg.replace(
        /h5v([\d.]+)h-5z(?="[^>]*stroke="none")|(?<=stroke="none"[^>]*)h5v([\d.]+)h-5z/,
        (_, after, before) => `h5v${Number(after ?? before) + 1}h-5z`,
      ),
    ),
    inMarks('one reading a step on', /^marks of axis read within half a tape step of true$/, (csv) =>
      changeMark(csv, ofAxis(3), (row) => put(row, 3, step(fields(row)[3]!))),
    ),
    inMarks('a reading and its true place 1 mm on', /^marks of axis stand where the layout has their lines$/, (csv) =>
      changeMark(csv, ofAxis(3), (row) => put(row, 4, String(Number(fields(row)[4]) + 1))),
    ),
    inMarks('two readings swapped', /^marks of axis read within half a tape step of true$/, (csv) => {
      const rows = csv.split(/(?<=\n)/);
      const [a, b] = [rows.findIndex(ofAxis(3)), rows.findIndex(ofAxis(4))];
      const [tapeA, tapeB] = [fields(rows[a]!)[3]!, fields(rows[b]!)[3]!];
      rows[a] = put(rows[a]!, 3, tapeB);
      rows[b] = put(rows[b]!, 3, tapeA);
      return rows.join('');
    }),
    inMarks('two marks swapped', /^marks of axis are numbered onward from one datum$/, (csv) => {
      const rows = csv.split(/(?<=\n)/);
      const [a, b] = [rows.findIndex(ofAxis(3)), rows.findIndex(ofAxis(4))];
      [rows[a], rows[b]] = [rows[b]!, rows[a]!];
      return rows.join('');
    }),
    inMarks('what two marks are for swapped', /^marks of axis stand where the layout has their lines$/, (csv) => {
      const rows = csv.split(/(?<=\n)/);
      const [a, b] = [rows.findIndex(ofAxis(2)), rows.findIndex(ofAxis(4))];
      const [forA, forB] = [fields(rows[a]!)[5]!, fields(rows[b]!)[5]!];
      rows[a] = put(rows[a]!, 5, forB);
      rows[b] = put(rows[b]!, 5, forA);
      return rows.join('');
    }),
    inMarks('a mark gone', /^no mark of axis is missing$/, (csv) => changeMark(csv, ofAxis(4), () => '')),
    inMarks('another datum', /^marks of axis are numbered onward from one datum$/, (csv) =>
      changeMark(csv, ofAxis(3), (row) => put(row, 1, 'the last mark')),
    ),
    inMarks('a guide line gone', /^every guide line is marked$/, (csv) =>
      csv
        .split(/(?<=\n)/)
        .filter((row) => !row.startsWith('left-edge,'))
        .join(''),
    ),
    inMarks('a diagonal 2 mm longer', /^work, corner to corner is that of the drawing$/, (csv) =>
      changeMark(
        csv,
        (row) => row.startsWith('check,') && /Work, corner/.test(row),
        (row) => put(row, 4, String(Number(fields(row)[4]) + 2)),
      ),
    ),
    inMarks('no diagonals', /^both diagonals of the work are to be checked$/, (csv) =>
      changeMark(
        csv,
        (row) => /Work, corner/.test(row),
        () => '',
      ),
    ),
  ];
}

export function layoutTamperings(sheet: string): Tampering[] {
  // biome-ignore lint/suspicious/noExplicitAny: the tests reach into the file as it is written
  const inLayout = (name: string, claim: RegExp, file: string, edit: (file: any) => void): Tampering => ({
    name: `layout.json: ${name}`,
    claim,
    file,
    tamper: (files) => changeLayout(files, edit),
  });
  // biome-ignore lint/suspicious/noExplicitAny: as above
  const listed = (file: any) => file.sheets.find((one: any) => one.file === sheet);
  return [
    inLayout(
      'border 1 mm wider',
      /^overall is field, borders and reserves, across$/,
      LAYOUT,
      ({ layout }) => layout.border++,
    ),
    inLayout(
      'border wider, reserve narrower',
      /^whole border repeats on the \w+ side$|^the band reaches|^every corner block lies in its corner$/,
      PLAN,
      ({ layout }) => {
        layout.border += 1;
        layout.overall.across += 2;
        layout.overall.along += 2;
        layout.work.across += 2;
        layout.work.along += 2;
      },
    ),
    inLayout('pitch 0.1 mm longer', /^field is repeats times pitch, across$/, LAYOUT, ({ layout }) => {
      layout.pitch.across += 0.1;
    }),
    inLayout('pitch longer, seen on the plan', /^pieces repeat at the pitch, along$/, PLAN, ({ layout }) => {
      layout.pitch.along += 0.1;
    }),
    inLayout(
      'one repeat more',
      /^field is repeats times pitch, along$/,
      LAYOUT,
      ({ layout }) => layout.repeats.along++,
    ),
    inLayout('one repeat more, pitch to match', /^pieces repeat at the pitch, along$/, PLAN, ({ layout }) => {
      layout.pitch.along = layout.field.along / ++layout.repeats.along;
    }),
    inLayout('a third of a repeat', /^repeats are whole or half, across$/, LAYOUT, ({ layout }) => {
      layout.repeats.across += 1 / 3;
    }),
    inLayout('another landing at the left', /^left and right edges land alike$/, LAYOUT, ({ layout }) => {
      layout.landing.left = layout.landing.left === 'whole' ? 'half' : 'whole';
    }),
    inLayout(
      'work 1 mm longer',
      /^work is overall less the end gaps, along$/,
      LAYOUT,
      ({ layout }) => layout.work.along++,
    ),
    inLayout('gaps 1 mm longer', /^end gap is the mean of both$/, LAYOUT, ({ layout }) => layout.gaps.far++),
    inLayout(
      'a finer tape step',
      /^marks of axis read within half a tape step of true$|^check distances/,
      MARKS,
      ({ job }) => {
        job.step /= 64;
      },
    ),
    inLayout('a placement dropped', /^every piece of the plan is painted through a window$/, PLAN, (file) =>
      listed(file).passes[0].shift(),
    ),
    inLayout('a placement twice', /^no piece of the plan is painted twice$/, PLAN, (file) => {
      const { passes } = listed(file);
      passes.push([passes[0][0]]);
    }),
    inLayout('a placement 0.2 mm off', /^every open window lies on one painted piece$/, sheet, (file) => {
      listed(file).passes[0][0].x += 0.2;
    }),
    inLayout(
      'a placement turned',
      /^every open window lies on one painted piece$|^every piece of the plan/,
      sheet,
      (file) => {
        const [first] = listed(file).passes[0];
        first.turn = (first.turn + 1) % 4;
        first.x += 7;
      },
    ),
    inLayout('a window taped shut', /^every piece of the plan is painted through a window$/, PLAN, (file) =>
      listed(file).passes[0][0].open.pop(),
    ),
    inLayout('another origin', /^every open window lies on one painted piece$/, sheet, (file) => {
      listed(file).origin[1] += 0.2;
    }),
    inLayout('a sheet not listed', /^no stencil of another layout lies among the files$/, '', (file) => {
      file.sheets = file.sheets.filter((one: { file: string }) => one.file !== sheet);
    }),
    inLayout('one window fewer listed', /^the sheet has its windows$/, sheet, (file) => listed(file).windows--),
    inLayout('a part made with tape that is not there', /^every part made with tape is on the plan$/, LAYOUT, (file) =>
      file.taped.push({ part: 'nothing', colour: '', says: '' }),
    ),
    inLayout('a wrong kind of value', /^the file is there and can be read$/, LAYOUT, ({ layout }) => {
      layout.border = '100';
    }),
  ];
}

/** What can be done to any written file: taken away, emptied, cut short, filled with rubbish. */
export function fileTamperings(name: string): Tampering[] {
  const put = (how: string, content: (before: string | Uint8Array) => string | Uint8Array): Tampering => ({
    name: `${name}: ${how}`,
    claim: READS,
    file: name,
    tamper: (files) => new Map(files).set(name, content(files.get(name)!)),
  });
  return [
    { name: `${name}: taken away`, claim: READS, file: name, tamper: (files) => without(files, name) },
    put('empty', () => ''),
    put('cut short', (before) => before.slice(0, Math.floor(before.length * 0.6))),
    put('rubbish', () => Uint8Array.from({ length: 5000 }, (_, i) => (i * 7919 + 13) % 251)),
  ];
}

const READS = /^the file is there and can be read$|can be read$|has the shape of the plan$/;
