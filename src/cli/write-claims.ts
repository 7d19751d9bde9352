import type { Claim } from '../check/claim.ts';
import type { Inks } from './inks.ts';
import { writeTable } from './table.ts';

/** What stands in a file may not write to the terminal. */
const plain = (text: string): string => text.replace(/[\p{Cc}\p{Cf}]/gu, '?');

/** Small numbers keep three digits, others three decimals. */
const shown = (value: string | number): string =>
  typeof value === 'string'
    ? plain(value)
    : `${Math.abs(value) < 0.001 ? Number(value.toPrecision(3)) : Number(value.toFixed(3))}`;

function group(file: string, claims: Claim[], inks: Inks): string[] {
  const [head = '', ...rows] = writeTable([
    ['  claim', 'measured', 'allowed'],
    ...claims.map(({ claim, measured, allowed }) => [`  ${plain(claim)}`, shown(measured), shown(allowed)]),
  ]);
  return [inks.strong(file === '' ? 'all files' : plain(file)), inks.faint(head), ...rows, ''];
}

/** The claims as a person reads them: those that hold, file by file; then the refuted ones and the count, where the eye ends up. */
export function writeClaims(claims: Claim[], inks: Inks): string {
  const held = claims.filter((one) => one.holds);
  const refuted = claims.filter((one) => !one.holds);
  const files = [...new Set(held.map((one) => one.file))].sort();
  const lines = files.flatMap((file) =>
    group(
      file,
      held.filter((one) => one.file === file),
      inks,
    ),
  );
  for (const { file, claim, measured, allowed } of refuted) {
    const where = file === '' ? '' : `${plain(file)}: `;
    lines.push(inks.bad(`REFUTED ${where}${plain(claim)}`), `  measured ${shown(measured)}; allowed ${shown(allowed)}`);
  }
  if (refuted.length === 0) return [...lines, inks.good(`All ${claims.length} claims hold.`)].join('\n');
  const sum = `${refuted.length} of ${claims.length} claims refuted: do not cut or paint from these files.`;
  return [...lines, '', inks.bad(sum)].join('\n');
}
