import type { Proposed } from '../../colour/proposed.ts';
import type { Issue, Result } from '../../issue.ts';
import type { Job } from '../../job/job.ts';
import type { Entry } from '../../refit/log.ts';
import type { Rows } from '../../refit/rows.ts';
import type { Ask, Asset, JobTree } from './ask.ts';
import type { ColoursFrom, ColoursTold, Seeing } from './colours.ts';
import type { Floor, FloorWanted } from './colours-floor.ts';
import type { Look } from './look.ts';
import type { Board, BoardsWanted } from './motifs.ts';
import type { Offer } from './offers/offer.ts';
import type { CutView } from './plan/cut.ts';
import type { RefitAsk, Refitted } from './refit.ts';
import type { Small } from './small.ts';
import type { Told } from './told.ts';
import type { ToldFiles } from './told-files.ts';

/** Every file of a job, and what was found. `proofs`: drawings of what does not hold, where sheets were refused. */
export interface MadeFiles {
  name: string;
  files: Map<string, string | Uint8Array>;
  says: string[];
  told?: ToldFiles;
}

/** What the page asks of the engine. Nothing here knows of the page. */
export interface Engine {
  /** The values of a job file, or why it cannot be read at all. */
  open(text: string): Promise<Result<JobTree>>;
  /** What the job file reads, and the plan it leads to. `missing`: files that it names and that were not given, by their paths. */
  look(ask: Ask): Promise<{ text: string; look: Result<Look>; told?: Told; missing: string[] }>;
  /** Every file, as the command line writes them. */
  make(ask: Ask): Promise<{ text: string; made: Result<MadeFiles>; proofs?: MadeFiles }>;
  /** The work as it is cut, with its bridges. */
  cut(ask: Ask): Promise<Result<CutView>>;
  /** What would help with what is wrong, each tried; nothing once another job is looked at. */
  offers(ask: Ask, issues: Issue[]): Promise<Offer[] | undefined>;
  /** A small picture of one layout, by its place in the list; `long`: pixels of the longest side of all. */
  small(ask: Ask, rank: number, long: number): Promise<Small | undefined>;
  /** What may be taken in one place of the job, each drawn as it would look in the work. */
  boards(ask: Ask, wanted: BoardsWanted): Promise<Board[]>;
  /** Why some of that cannot be taken, by its name, each tried; nothing once the same is asked anew. */
  refusals(ask: Ask, wanted: BoardsWanted): Promise<Record<string, string[]> | undefined>;
  /** Which parts there are to colour, and how colours that touch read. */
  colours(ask: Ask): Promise<Result<ColoursTold>>;
  /** Other ways to colour the work. */
  propose(ask: Ask, from: ColoursFrom): Promise<Result<Proposed>>;
  /** The colours of a palette as they are seen in other ways. */
  seen(palette: Job['palette']): Promise<Record<Seeing, Job['palette']>>;
  /** The rows that a re-fit is asked for by, or why there is none for this job. */
  rows(ask: Ask): Promise<Result<Rows>>;
  /** New marks for what is left when the work has crept. */
  refit(ask: Ask, wanted: RefitAsk): Promise<Result<Refitted>>;
  /** The files of re-fits that were taken, the oldest first, as the command line writes them. */
  refitFiles(ask: Ask, entries: readonly Entry[]): Promise<Result<Map<string, string>>>;
  /** The work as it will look, new or worn, in the photo of the floor where the job has one. */
  floor(ask: Ask, wanted: FloorWanted): Promise<Result<Floor>>;
  /** Takes the files that jobs name; those that were there before are forgotten. */
  keep(assets: Asset[]): Promise<void>;
}

/** What the engine needs that only a page has. */
export interface Page {
  /** A drawing as a PNG picture. */
  picture(svg: string, longSide: number): Promise<Uint8Array>;
  /** The script with what most looks do without, and the faces that it writes with, as `data:` addresses by their weight. */
  rest(): Promise<{ script: Blob; letters: Record<string, string> }>;
}

/** A call from one side, and the answer of the other. */
export type Message =
  | { call: number; name: string; args: unknown[] }
  | { answer: number; value: unknown }
  | { answer: number; error: string };
