import type { Claim } from '../check/claim.ts';
import type { Inks } from './inks.ts';
import { writeTable } from './table.ts';

/** The claims as a person reads them: refuted ones first, then the count. */
export function writeClaims(claims: Claim[], inks: Inks): string {
  const ordered = [...claims.filter((one) => !one.holds), ...claims.filter((one) => one.holds)];
  const [head = '', ...rows] = writeTable([
    ['', 'claim', 'measured', 'allowed', 'file'],
    ...ordered.map((one) => [
      one.holds ? 'holds' : 'REFUTED',
      one.claim,
      `${one.measured}`,
      `${one.allowed}`,
      one.file,
    ]),
  ]);
  const refuted = ordered.filter((one) => !one.holds).length;
  const sum =
    refuted === 0
      ? inks.good(`All ${claims.length} claims hold.`)
      : inks.bad(`${refuted} of ${claims.length} claims refuted: do not cut or paint from these files.`);
  return [inks.faint(head), ...rows.map((line, at) => (at < refuted ? inks.bad(line) : line)), '', sum].join('\n');
}
