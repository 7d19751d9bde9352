import { writeTable } from '../../src/cli/table.ts';
import type { BenchFile, Row } from './row.ts';

/** Runs every bench in this folder, or those whose names are given, and prints one table. Ends with 1 when a limit is missed. */
const files = import.meta.glob<BenchFile>(['./*.ts', '!./run.ts', '!./row.ts']);
const wished = process.argv.slice(2);

const nameOf = (path: string): string => path.replace(/^\.\/|\.ts$/g, '');
const paths = Object.keys(files).sort();
const unknown = wished.filter((name) => !paths.some((path) => nameOf(path) === name));
if (unknown.length > 0) {
  console.error(`There is no bench ${unknown.join(', ')}; there are ${paths.map(nameOf).join(', ')}.`);
  process.exit(2);
}

const rows: Row[] = [];
for (const path of paths) {
  if (wished.length > 0 && !wished.includes(nameOf(path))) continue;
  const { bench } = await files[path]!();
  if (bench === undefined) continue;
  console.error(`${nameOf(path)} …`);
  rows.push(...(await bench()));
}

const lines = rows.map(({ row, figure, limit, holds }) => [row, figure, limit, holds ? 'holds' : 'MISSED']);
console.log(writeTable([['what', 'figure', 'limit', ''], ...lines], [1, 2]).join('\n'));
process.exitCode = rows.every((one) => one.holds) ? 0 : 1;
