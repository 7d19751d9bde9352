import { basename, join } from 'node:path';
import type { Command } from 'commander';
import { bad, type Issue, type Result } from '../issue.ts';
import type { HousePlan } from '../paint/house.ts';
import type { Planned } from '../pipeline.ts';
import type { FileIssues, JobFile } from './house-jobs.ts';
import { withProgress } from './progress.ts';
import { assetReader } from './read-asset.ts';
import { readJobFile } from './read-job-file.ts';
import { ending } from './run.ts';
import { DONE, type Ending, REFUSED, refuse, refuseAll, shownPath, talk, tell, tellJson, tidy } from './talk.ts';
import { writeOut } from './write-out.ts';

/** Long side of the picture, in pixels. */
const PICTURE = 2400;

interface Options {
  out: string;
  json?: boolean;
  replace?: boolean;
}

type Work = Planned & { path: string };

/** What the house itself says wrongly, in its own file. A job in its place is told as such. */
async function readHouseFile(path: string): Promise<Result<{ title: string; name: string }>> {
  const read = await readJobFile(path, 'house');
  if (!read.ok) return read;
  const { houseIn, houseSays, houseTitle } = await import('../job/house.ts');
  const named = houseIn(read.value);
  const isJob = named !== undefined || /^surface\s*:/m.test(read.value);
  if (isJob)
    return bad({
      code: 'file/house',
      path: [],
      says: `${shownPath(path)} is a job, not a house`,
      hint:
        named === undefined
          ? 'the file that jobs name after `house:`; this one names none'
          : `evenfield house ${shownPath(join(path, '..', named))} ${shownPath(path)}`,
    });
  const house = { file: basename(path), text: read.value };
  const said = houseSays(house);
  if (!said.ok) return bad(...said.issues.map((issue): Issue => ({ ...issue, path: [] })));
  const { jobName } = await import('../job/name.ts');
  const title = houseTitle(house);
  return { ok: true, value: { title, name: jobName(title, house.file) } };
}

/** The works of all jobs, or everything that is wrong with any of them; what several say of their house is told once. */
async function planAll(files: readonly JobFile[]): Promise<{ works: Work[]; wrong: FileIssues[] }> {
  const { planJob } = await import('../pipeline.ts');
  const { houseIn } = await import('../job/house.ts');
  const { shown } = await import('../units/index.ts');
  const works: Work[] = [];
  const wrong: FileIssues[] = [];
  const told = new Set<string>();
  for (const { path, text } of files) {
    const planned = await planJob(text, path, 1, assetReader(path));
    if (planned.ok) {
      works.push({ ...planned.value, path });
      continue;
    }
    // Every job sees the file of the house along a path of its own.
    const seen = shown(houseIn(text) ?? '');
    const fresh = planned.issues.filter(({ path: [key], says }) => {
      if (key !== 'house') return true;
      const plain = says.replace(seen, '');
      const isNew = !told.has(plain);
      told.add(plain);
      return isNew;
    });
    if (fresh.length > 0) wrong.push({ file: path, issues: fresh });
  }
  return { works, wrong };
}

/** Two jobs of one name: they would be made into one folder, and nobody could tell their shares apart. */
function sameName(works: readonly Work[]): string | undefined {
  for (const [at, { job, path }] of works.entries()) {
    const other = works.slice(0, at).find((one) => one.job.name === job.name);
    if (other) return `${shownPath(other.path)} and ${shownPath(path)} are both called ${job.title}`;
  }
  return undefined;
}

async function wordsOf(plan: HousePlan): Promise<string[]> {
  const { roomOf, wrap, writeTable } = await import('./table.ts');
  const { inksFor } = await import('./inks.ts');
  const { HOUSE_HEAD, houseRows } = await import('../write/house-paint.ts');
  const { sayHouse } = await import('../paint/house-says.ts');
  const inks = inksFor(process.stdout, process.env);
  const [head = '', ...rows] = writeTable([HOUSE_HEAD.map((word) => word.toLowerCase()), ...houseRows(plan)]);
  const room = roomOf(process.stdout);
  const count = plan.jobs.length;
  return [
    inks.strong(`${plan.title}: the paint of ${count === 1 ? 'one job' : `${count} jobs together`}`),
    '',
    inks.faint(head),
    ...rows,
    '',
    ...sayHouse(plan).flatMap((line) => wrap(line, room, 0)),
  ];
}

async function house(path: string, given: string[], options: Options): Promise<Ending> {
  const read = await readHouseFile(path);
  if (!read.ok) return refuseAll(read.issues, path);
  const { title, name } = read.value;
  const { findJobs, givenJobs } = await import('./house-jobs.ts');
  const found = await (given.length > 0 ? givenJobs(path, given) : findJobs(path));
  if (!found.ok) return refuseAll(found.issues, path);
  for (const { issues } of found.value.left) for (const { says } of issues) talk(`${says}; it is left out.`);
  const { works, wrong } = await withProgress('working out the jobs', () => planAll(found.value.jobs));
  if (wrong.length > 0) {
    for (const [at, { file, issues }] of wrong.entries()) {
      if (at > 0) talk('');
      refuseAll(issues, file);
    }
    return REFUSED;
  }
  const twins = sameName(works);
  if (twins !== undefined) return refuse(twins, 'title: a name of its own in each of them');
  const { planHouse } = await import('../paint/house.ts');
  const planned = planHouse(works);
  if (!planned.ok) return refuseAll(planned.issues, path);
  const plan = planned.value;

  const { writeHouseSheet } = await import('../write/colourways/house-sheet.ts');
  const { writeHouseTable } = await import('../write/house-paint.ts');
  const { renderPng } = await import('../write/png.ts');
  const sheet = await writeHouseSheet(works, title);
  const out = join(options.out, `${name}-house`);
  const files = new Map<string, string | Uint8Array>([
    ['house.svg', sheet],
    ['house.png', await renderPng(sheet, PICTURE)],
    ['house-paint.csv', writeHouseTable(plan)],
  ]);
  const written = await writeOut(out, files, options.replace);
  if (!written.ok) return refuseAll(written.issues, out);
  if (options.json === true) {
    const jobs = works.map(({ path: file, job }) => ({ file, title: job.title, name: job.name }));
    tellJson({ out, files: written.value, ...plan, jobs }, tidy);
    return DONE;
  }
  tell(
    [
      ...(await wordsOf(plan)),
      '',
      `All works at one scale are drawn in ${join(out, 'house.svg')} and house.png; the table is in house-paint.csv.`,
    ].join('\n'),
  );
  return DONE;
}

export function addHouse(program: Command): void {
  program
    .command('house')
    .summary('show all jobs of a house together, and the paint they take')
    .description(
      'Draws all jobs that share a house file at one scale, and adds up their paint: what is at hand counts once, and tins are chosen for all jobs together. The best layout of each job counts.',
    )
    .argument('<house>', 'the file that the jobs name after `house:`')
    .argument('[jobs...]', 'job files; without them, all beside it and in the folders beside it that name it')
    .option('--out <folder>', 'where to put its folder', 'out')
    .option('--replace', 'write over files that somebody edited')
    .option('--json', 'print what was found as JSON, in mm, ml and counts')
    .addHelpText('after', '\nExample:\n  evenfield house gable-house.yaml')
    .action(ending(house));
}
