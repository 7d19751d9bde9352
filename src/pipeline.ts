import type { Drawing, Region } from './compose/drawing.ts';
import type { Finish } from './compose/finish.ts';
import type { OwnDrawing } from './drawing/read.ts';
import type { Fit, Layout } from './fit/layout.ts';
import type { Motifs } from './fit/problem.ts';
import { bad, fail, good, type Issue, type Result } from './issue.ts';
import type { House } from './job/house.ts';
import type { Job } from './job/job.ts';
import type { Motif } from './motif/motif.ts';
import type { PaintPlan } from './paint/whole.ts';
import type { FittedRoom } from './room-pipeline.ts';
import type { Site } from './site/site.ts';
import type { Tell } from './stage.ts';
import type { Finished } from './write/finished.ts';

export interface Fitted {
  job: Job;
  site: Site;
  motifs: Motifs;
  fit: Fit;
}

export interface Made {
  job: Job;
  /** Of one rectangle of repeats; nothing of a border round a room. */
  layout: Layout | undefined;
  /** File name to text or bytes; nothing is on disk yet. */
  files: Map<string, string | Uint8Array>;
  /** What was found, in a few plain lines. */
  says: string[];
}

/** A job as it is painted, and what it takes. */
export interface Planned {
  job: Job;
  drawing: Drawing;
  plan: PaintPlan;
}

/** What was asked for, or why not; sheets that do not hold together come as drawings with every place at fault. */
export type Making = Result<Made> & { proofs?: { name: string; files: Map<string, string | Uint8Array> } };

/** Reads a file that a job names, its path as the job has it. Issues say what is wrong with it. */
export type Assets = (path: string) => Promise<Result<Uint8Array>>;

/** A motif that takes turns with another has no lines within its repeats that are lines of both, so its repeats are counted and marked whole. */
function amongOthers({ counts: _, ...motif }: Motif): Motif {
  return motif;
}

/** The motifs that a job names. */
function findMotifs(job: Job, find: (name: string) => Motif): Motifs {
  const { field, border, inner, medallion } = job;
  return {
    field: field.alternation?.other ? amongOthers(find(field.motif)) : find(field.motif),
    ...(border.motif === 'none' ? {} : { border: find(border.motif) }),
    ...(border.motif === 'none' || border.turn !== 'block' ? {} : { corner: find(border.corner.motif) }),
    ...(inner ? { inner: find(inner.motif) } : {}),
    ...(inner?.turn === 'block' ? { innerCorner: find(inner.corner.motif) } : {}),
    ...(medallion ? { medallion: find(medallion.motif) } : {}),
    ...(field.inset ? { inset: find(field.inset.motif) } : {}),
    ...(field.alternation?.other ? { other: find(field.alternation.other.motif) } : {}),
  };
}

/** The person's own drawings that the job names as motifs, by their paths. */
async function readDrawings(job: Job, assets?: Assets): Promise<Result<Map<string, OwnDrawing>>> {
  const { isDrawing } = await import('./job/own-drawings.ts');
  const { motif, alternation, inset } = job.field;
  const found = new Map<string, OwnDrawing>();
  for (const name of [motif, alternation?.other?.motif, inset?.motif]) {
    if (name === undefined || !isDrawing(name) || found.has(name)) continue;
    const bytes = await (assets?.(name) ?? fail('drawing/no-file', [], `the drawing ${name} cannot be read here`));
    if (!bytes.ok) return bytes;
    const { drawingText } = await import('./drawing/text.ts');
    const { keptDrawing } = await import('./drawing/kept.ts');
    const read = await keptDrawing(drawingText(bytes.value), name);
    if (!read.ok) return read;
    found.set(name, read.value);
  }
  return good(found);
}

/** The house that a job names, if it names one. */
async function readHouse(text: string, assets?: Assets): Promise<Result<House | undefined>> {
  const { houseIn } = await import('./job/house.ts');
  const file = houseIn(text);
  if (file === undefined) return good(undefined);
  const bytes = await (assets?.(file) ?? fail('house/no-file', ['house'], `the house ${file} cannot be read here`));
  if (!bytes.ok) return { ok: false, issues: bytes.issues.map((issue) => ({ ...issue, path: ['house'] })) };
  return good({ file, text: new TextDecoder().decode(bytes.value) });
}

/** A job as it was fitted: one rectangle of repeats, or a border along the walls of a room. */
export type AnyFitted = { kind: 'rectangle'; value: Fitted } | { kind: 'room border'; value: FittedRoom };

/** Reads a job and the house that it names. `file` names the job in what is said about it. */
export async function readWithHouse(text: string, file: string, assets?: Assets): Promise<Result<Job>> {
  const { allMotifs } = await import('./motif/library.ts');
  const { readJob } = await import('./job/read.ts');
  const house = await readHouse(text, assets);
  return house.ok ? readJob(text, file, allMotifs(), house.value) : house;
}

/**
 * Reads a job and fits it, whatever its surface. `file` names the job in what is said about it.
 * @param why whether it is worked out what would land where nothing does
 */
export async function fitAny(
  text: string,
  file: string,
  most = 10,
  assets?: Assets,
  why = true,
): Promise<Result<AnyFitted>> {
  const read = await readWithHouse(text, file, assets);
  if (!read.ok) return read;
  const job = read.value;
  if (job.surface === 'room-border') {
    const { fitRoom } = await import('./room-pipeline.ts');
    const fitted = await fitRoom(job, most, why);
    return fitted.ok ? good({ kind: 'room border', value: fitted.value }) : fitted;
  }
  const fitted = await fitRectangle(job, most, assets, why);
  return fitted.ok ? good({ kind: 'rectangle', value: fitted.value }) : fitted;
}

/** The same for jobs of one rectangle of repeats; others are refused. */
export async function fitJob(text: string, file: string, most = 10, assets?: Assets): Promise<Result<Fitted>> {
  const fitted = await fitAny(text, file, most, assets);
  if (!fitted.ok) return fitted;
  if (fitted.value.kind === 'rectangle') return good(fitted.value.value);
  return fail(
    'fit/room-border',
    ['surface'],
    'a border round a room has no rows of repeats',
    'mark each wall again from its corner',
  );
}

async function fitRectangle(job: Job, most: number, assets: Assets | undefined, why: boolean): Promise<Result<Fitted>> {
  const { findMotif } = await import('./motif/library.ts');
  const { buildSite } = await import('./site/build.ts');
  const { fitLayouts } = await import('./fit/fit.ts');
  const built = buildSite(job);
  if (!built.ok) return built;
  const drawings = await readDrawings(job, assets);
  if (!drawings.ok) return drawings;
  const own = drawings.value;
  const motifs = findMotifs(job, (name) => own.get(name)?.motif ?? findMotif(name)!);
  const { fitStairs } = await import('./stairs/fit.ts');
  const fitted = (job.surface === 'stairs' ? fitStairs : fitLayouts)(job, built.value, motifs, most, why);
  if (!fitted.ok) return fitted;
  const notes = [...own.values()].flatMap((drawing) => drawing.notes);
  const site = { ...built.value, notes: [...built.value.notes, ...notes] };
  return good({ job, site, motifs, fit: fitted.value });
}

/** The work with bridges where its shapes need them, and what those cost. */
async function drawBridged(
  { job, motifs }: Fitted,
  layout: Layout,
  assets?: Assets,
): Promise<Result<Pick<Finished, 'drawing' | 'repeat' | 'bridges'>>> {
  const { composeWork } = await import('./compose/work.ts');
  const { faceFinder } = await import('./lettering/faces.ts');
  const { loadBridging } = await import('./stencil/bridges/bridging.ts');
  const { inPaintOrder } = await import('./stencil/meeting/meeting.ts');
  const { costOfBridges } = await import('./stencil/bridges/cost.ts');
  const { repeatOf } = await import('./compose/compose.ts');
  const findFace = faceFinder(assets);
  const { whole: met, bridged, gaps } = await loadBridging(job.stencil, job.colours);
  const draw = async (finish: Finish) => {
    const drawn = await composeWork(layout, job, motifs, findFace, finish);
    if (drawn.ok && job.stencil.meeting.way === 'overlap') drawn.value.regions.sort(inPaintOrder(job.colours));
    return drawn;
  };
  const [whole, drawing] = [await draw(met), await draw(bridged)];
  if (!whole.ok) return whole;
  if (!drawing.ok) return drawing;
  const bridges = costOfBridges(whole.value, drawing.value);
  const repeat = repeatOf(layout, job, motifs, bridged);
  if (job.stencil.gaps === 'open') return good({ drawing: drawing.value, repeat, bridges });
  const filling = await draw(gaps);
  if (!filling.ok) return filling;
  const fills = filling.value.regions.map((region): Region => ({ ...region, fills: true }));
  return good({ drawing: { ...drawing.value, regions: [...drawing.value.regions, ...fills] }, repeat, bridges });
}

/** The issues with a drawing of each sheet that they are about. */
async function proven(issues: Issue[], { name }: Job): Promise<Making> {
  const { isSheetIssue } = await import('./stencil/issues.ts');
  const { writeProofs } = await import('./write/proof.ts');
  const files = await writeProofs(issues.filter(isSheetIssue));
  const plain = issues.map(({ code, path, says, hint }): Issue => ({ code, path, says, ...(hint ? { hint } : {}) }));
  return { ...bad(...plain), ...(files.size > 0 ? { proofs: { name: `${name}-proof`, files } } : {}) };
}

/** A job with at least so many layouts fitted that the one chosen is among them; `choose` is its rank, from 1. */
async function fitChosen(text: string, file: string, choose: number, assets?: Assets): Promise<Result<AnyFitted>> {
  const fitted = await fitAny(text, file, Math.max(10, choose), assets);
  if (!fitted.ok) return fitted;
  const { length } = fitted.value.value.fit.layouts;
  if (choose <= length) return fitted;
  return fail('fit/choice', [], `layout ${choose} was asked for; there are ${length}`, `a number from 1 to ${length}`);
}

/**
 * The whole job: fit, drawing, sheets, marks and every written file, in memory.
 * @param choose rank of the layout to make, from 1
 * @param assets reads the fonts that the job names; without it only the face that comes with the tool is there
 * @param tell   is told what is being done
 */
export async function makeFiles(
  text: string,
  file: string,
  choose = 1,
  assets?: Assets,
  tell: Tell = () => {},
): Promise<Making> {
  tell('looking for layouts');
  const fitted = await fitChosen(text, file, choose, assets);
  if (!fitted.ok) return fitted;
  return fitted.value.kind === 'rectangle'
    ? makeRectangle(fitted.value.value, choose, assets, tell)
    : makeRoomBorder(fitted.value.value, choose, tell);
}

/** A job as it is painted, without its files. `choose`: rank of the layout, from 1. */
export async function drawJob(
  text: string,
  file: string,
  choose = 1,
  assets?: Assets,
): Promise<Result<{ job: Job; drawing: Drawing }>> {
  const fitted = await fitChosen(text, file, choose, assets);
  if (!fitted.ok) return fitted;
  const { kind, value } = fitted.value;
  if (kind === 'room border') {
    const { drawRoom } = await import('./room-pipeline.ts');
    return good({ job: value.job, drawing: (await drawRoom(value, value.fit.layouts[choose - 1]!)).drawing });
  }
  const drawn = await drawBridged(value, value.fit.layouts[choose - 1]!, assets);
  return drawn.ok ? good({ job: value.job, drawing: drawn.value.drawing }) : drawn;
}

/** A job as it is painted and what it takes, without its files. `choose`: rank of the layout, from 1. */
export async function planJob(text: string, file: string, choose = 1, assets?: Assets): Promise<Result<Planned>> {
  const fitted = await fitChosen(text, file, choose, assets);
  if (!fitted.ok) return fitted;
  const { kind, value } = fitted.value;
  const { job } = value;
  if (kind === 'room border') {
    const { planRoom } = await import('./room-pipeline.ts');
    const planned = await planRoom(value, value.fit.layouts[choose - 1]!);
    return planned.ok ? good({ job, ...planned.value }) : planned;
  }
  const layout = value.fit.layouts[choose - 1]!;
  const cut = await cutRectangle(value, layout, assets);
  if (!cut.ok) return cut;
  const { filmsFor } = await import('./stencil/films.ts');
  const { paintOfWork } = await import('./write/paint.ts');
  const { drawing, sheets } = cut.value;
  const plan = await paintOfWork({ ...value, layout, drawing, sheets }, filmsFor(sheets, job.stencil.sheet));
  return good({ job, drawing, plan });
}

async function makeRoomBorder(fitted: FittedRoom, choose: number, tell: Tell): Promise<Making> {
  const { makeRoom } = await import('./room-pipeline.ts');
  const made = await makeRoom(fitted, fitted.fit.layouts[choose - 1]!, tell);
  return made.ok
    ? good({ job: fitted.job, layout: undefined, files: made.files, says: made.says })
    : proven(made.issues, fitted.job);
}

/** The work as it is painted, and the sheets it is painted through. */
async function cutRectangle(
  fitted: Fitted,
  layout: Layout,
  assets?: Assets,
  tell: Tell = () => {},
): Promise<Result<Pick<Finished, 'drawing' | 'repeat' | 'bridges' | 'sheets'>>> {
  const { job, site, motifs } = fitted;
  const { cutSheets } = await import('./stencil/cut.ts');
  tell('drawing the work');
  const drawn = await drawBridged(fitted, layout, assets);
  if (!drawn.ok) return drawn;
  const { floor } = site;
  const laid = floor && (await import('./compose/floor.ts'));
  const drawing = {
    ...drawn.value.drawing,
    ...(floor && laid ? { marked: laid.markedOn(floor, layout, motifs.field) } : {}),
  };
  tell('cutting the stencils');
  const cut = await cutSheets(drawing, layout, job, motifs);
  if (!cut.ok) return cut;
  const { sheetsOnFloor } = await import('./stencil/on-floor.ts');
  const sheets = floor && laid ? sheetsOnFloor(cut.value, await laid.clipToPattern(floor)) : cut.value;
  return good({ ...drawn.value, sheets });
}

async function makeRectangle(fitted: Fitted, choose: number, assets: Assets | undefined, tell: Tell): Promise<Making> {
  const { job, site, motifs, fit } = fitted;
  const layout = fit.layouts[choose - 1]!;
  const { scheduleMarks } = await import('./marks/marks.ts');
  const { sayBridges } = await import('./stencil/bridges/says.ts');
  const cut = await cutRectangle(fitted, layout, assets, tell);
  if (!cut.ok) return proven(cut.issues, job);
  const { drawing, bridges } = cut.value;
  const { scheduleFloor } = await import('./marks/floor/schedule.ts');
  const { writeFiles } = await import('./write/files.ts');
  const { sayPlaced } = await import('./site/say-placed.ts');
  const { sayCloth } = await import('./cloth/says.ts');
  const { sayColours } = await import('./colour/says.ts');
  const { sayFlight } = await import('./stairs/says.ts');
  const { viewOf } = await import('./site/placed.ts');
  const notes = [...site.notes, ...sayPlaced(site, job, layout), ...sayCloth(job, layout), ...sayFlight(job, layout)];
  tell('writing the plan, marks and sheets');
  const looks = sayColours(drawing, job);
  const files = await writeFiles({
    job,
    looks,
    site: { ...site, notes },
    motifs,
    fit,
    layout,
    ...cut.value,
    schedule: site.floor
      ? scheduleFloor(layout, job, site.floor, motifs.field)
      : scheduleMarks(layout, job, motifs, drawing.lettering, viewOf(site, job, layout)),
  });
  return good({
    job,
    layout,
    files,
    says: [...notes, layout.says, ...looks, ...sayBridges(bridges, job.stencil)],
  });
}
