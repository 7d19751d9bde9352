/** The job sheet of the made-up work, written out by hand as a painter would read it. */
export interface Sheets {
  file: string;
  colour: string;
  /** Across × along, mm; windows and keys. */
  size: [string, string];
  windows: number;
  keys: number;
  /** Pass by pass: where the middle of the sheet lies, how it is turned, and which windows are open. */
  passes: [x: string, y: string, turned: string, open: string][][];
}

const table = (head: string[], rows: string[][]): string =>
  `<table><thead><tr>${head.map((cell) => `<th>${cell}</th>`).join('')}</tr></thead><tbody>${rows
    .map((row) => `<tr>${row.map((cell) => `<td>${cell}</td>`).join('')}</tr>`)
    .join('')}</tbody></table>`;

export const shortly = (use: string): string =>
  use.replace(/between (?:border )?repeats (\d+) and (\d+)/, 'repeats $1–$2').replaceAll('border repeats', 'repeats');

function marksOf(rows: string[][]): string {
  const lines = [...new Set(rows.map(([line]) => line!))].filter((line) => line !== 'check');
  return lines
    .map((line) => {
      const own = rows.filter(([name]) => name === line);
      return `<h3>${line.charAt(0).toUpperCase()}${line.slice(1)}</h3><p>From ${own[0]![1]}.</p>${table(
        ['Done', 'No.', 'Tape', 'For'],
        own.map(([, , number, tape, , use]) => ['', number!, tape!, shortly(use!)]),
      )}`;
    })
    .join('');
}

const placements = (sheets: Sheets[]): number => sheets.reduce((sum, { passes }) => sum + passes.flat().length, 0);

const perColour = (sheets: Sheets[]): string =>
  [...new Set(sheets.map(({ colour }) => colour))]
    .map((colour, at) => {
      const own = sheets.filter((sheet) => sheet.colour === colour);
      const passes = own.reduce((sum, sheet) => sum + sheet.passes.length, 0);
      const much = `${own.length} sheet${own.length > 1 ? 's' : ''}, ${placements(own)} placements in ${passes} passes`;
      return `<li>${at === 0 ? 'First' : 'Last'} ${colour}: ${much}.</li>`;
    })
    .join('');

const laid = ({ file, size, windows, keys, passes }: Sheets): string =>
  `<h3>${file}</h3><p>${size.join(' × ')}, ${windows} window${windows > 1 ? 's' : ''} and ${keys} key${keys > 1 ? 's' : ''}.</p>${table(
    ['Done', 'Middle, from the axis', 'Middle, along', 'Turned', 'Windows open'],
    passes.flatMap((pass, at) => [
      [`Pass ${at + 1}: ${pass.length} placement${pass.length > 1 ? 's' : ''}`],
      ...pass.map((row) => ['', ...row]),
    ]),
  )}`;

export function smallSheet(drawing: string, says: string, marks: string[][], sheets: Sheets[]): string {
  const fact = (name: string, value: string) => `<dt>${name}</dt><dd>${value}</dd>`;
  const listed = marks.filter(([line]) => line !== 'check');
  const facts = [
    ['Overall, across × along', '824 mm × 1076 mm'],
    ['Field', '600 mm × 802 mm'],
    ['Repeats', '3 × 4'],
    ['Each repeat', '200 mm × 200 mm'],
    ['Border', '100 mm'],
    ['Reserve', '12 mm'],
  ].map(([name, value]) => fact(name!, value!));
  // Ground 824 × 1025.6; 12 diamonds of 200 × 200.4 / 2; 28 teeth 86.6 high and four corners of 100 × 100.
  const colours = [
    ['cream', 'ground', '0.85 m²'],
    ['blue', 'field', '0.24 m²'],
    ['red', 'border, corner', '0.17 m²'],
  ];
  const body = [
    '<h1>A made-up runner</h1>',
    `<p>${says}</p><dl>${facts.join('')}</dl>${drawing}`,
    table(['Colour', 'For', 'One coat covers'], colours),
    `<ul><li>Stencil film or oiled card: 1 piece of 1000 mm × 700 mm, for 3 sheets, the largest 730 mm × 260 mm</li>`,
    `<li>2 stencil brushes or small foam rollers</li><li>Cut the 3 sheets from 1 piece of film.</li>`,
    `<li>There are ${placements(sheets)} placements in 2 colours.</li>${perColour(sheets)}`,
    `<li>There are ${listed.length} marks on ${new Set(listed.map(([line]) => line)).size} lines: tick each off in “Marks”.</li></ul>`,
    marksOf(marks),
    '<h2>Is it square?</h2>',
    table(
      ['Done', 'Tape', 'Between', 'If it is off'],
      marks.filter(([line]) => line === 'check').map(([, , , tape, , use]) => ['', tape!, use!, 'pull it again']),
    ),
    sheets.map(laid).join(''),
  ];
  return `<!doctype html><html><head><title>x</title></head><body>${body.join('\n')}</body></html>\n`;
}
