import type { Proof } from '../../../src/check/claim.ts';
import { REFUTING } from './refuting.ts';

const FOUND = import.meta.glob<Proof>('../../../src/check/claims/*.ts', { eager: true, import: 'proof' });

/** What each family says that it proves, by the name of its file. */
export const PROOFS: ReadonlyMap<string, Proof> = new Map(
  Object.keys(FOUND)
    .sort()
    .map((place) => [place.replace(/^.*\/|\.ts$/g, ''), FOUND[place]!]),
);

export const [BEGINS, ENDS] = ['<!-- claims -->', '<!-- end of claims -->'];

const refutedBy = (name: string): string => {
  const by = REFUTING[name]!;
  return 'change' in by ? `${by.change} (${by.work})` : `\`${by.test}\`: ${by.name}`;
};

/** The table of all claims for DEVELOPERS.md, between its marks. */
export function claimsTable(): string {
  const rows = [...PROOFS].map(([name, { claims, files, method, tolerance }]) =>
    [`\`${name}\``, claims, files.map((file) => `\`${file}\``).join(', '), method, tolerance, refutedBy(name)].join(
      ' | ',
    ),
  );
  return [
    BEGINS,
    '| `src/check/claims` | what is claimed | files | method | tolerance | refuted by |',
    '|---|---|---|---|---|---|',
    ...rows.map((row) => `| ${row} |`),
    ENDS,
  ].join('\n');
}
