import { type Claim, equal, type Proof, stated } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import type { Read } from '../read/read.ts';

/** What every job is written as, besides its stencils, and the printed job sheet, where job-sheet.html names it. */
const ALWAYS = ['layout.json', 'plan.svg', 'plan.png', 'template.svg', 'marks.csv', 'marks.svg', 'job-sheet.html'];

function reads(set: FileSet, name: string): Read<unknown> {
  if (name === 'layout.json') return set.layout();
  if (name === 'plan.svg') return set.plan();
  if (name === 'marks.csv') return set.marks();
  if (name === 'template.svg') return set.template();
  const sheet = set.sheets().find(({ entry }) => entry.file === name);
  if (sheet) return sheet.drawn;
  if (/\.(?:png|pdf)$/.test(name))
    return set.content(name) === undefined ? { ok: false, says: `${name} is missing` } : { ok: true, value: 0 };
  return set.text(name);
}

export const proof: Proof = {
  claims: 'every file is there and can be read; no stencil of another layout; each sheet listed once',
  files: [
    'job-sheet.html',
    'job-sheet.pdf',
    'layout.json',
    'marks.csv',
    'marks.svg',
    'plan.png',
    'plan.svg',
    'stencil-*.svg',
    'template.svg',
  ],
  method: 'each file read by its own reader',
  tolerance: 'none',
};

/** Every file of the job is there and can be read, and no stencil of another layout lies among them. */
export default function files(set: FileSet): Claim[] {
  const sheets = set.sheets().map(({ entry }) => entry.file);
  const page = set.text('job-sheet.html');
  const printed = page.ok && page.value.includes('job-sheet.pdf') ? ['job-sheet.pdf'] : [];
  const layout = set.layout();
  // A band that is masked with tape has no repeat to trace.
  const band = layout.ok && layout.value.roomBorder?.walls.every(({ repeats }) => repeats === 0);
  const always = band ? ALWAYS.filter((name) => name !== 'template.svg') : ALWAYS;
  const expected = [...new Set([...always, ...printed, ...sheets])];
  const claims = expected.map((name) => {
    const found = reads(set, name);
    return equal(name, 'the file is there and can be read', found.ok ? 'it is' : found.says, 'it is');
  });
  const others = set.names.filter((name) => !expected.includes(name));
  const left = others.filter((name) => /^stencil-/i.test(name));
  const measured = others.length === 0 ? 'no other file' : `${others.length} more: ${others.slice(0, 10).join(', ')}`;
  claims.push(stated('', 'no stencil of another layout lies among the files', left.length === 0, measured, 'none'));
  if (!set.layout().ok) return claims;
  const twice = sheets.find((name, at) => sheets.indexOf(name) !== at);
  claims.push(
    equal('layout.json', 'every sheet is listed once', twice ? `${twice} is listed twice` : 'it is', 'it is'),
  );
  return claims;
}
