import type { Step } from './history.ts';

/** A step as it is kept. `base` stands only where it is another than that of the step before. */
export interface KeptStep extends Omit<Step, 'base'> {
  id: number;
  /** The step before it; the first has none. */
  before?: number;
  base?: string;
}

/** Where one opened page is: in which line of steps, and at which of them. */
export interface KeptPage {
  id: number;
  at: number;
  /** The last step of its line. */
  tip: number;
  /** When it was last written, ms. */
  when: number;
}

/** A file that jobs name. */
export interface KeptFile {
  path: string;
  bytes: Uint8Array;
  when: number;
}

/** What can be done inside one change of the store. */
export interface Inside {
  step(id: number): Promise<KeptStep | undefined>;
  steps(): Promise<KeptStep[]>;
  /** Gives the id it got. */
  addStep(step: Omit<KeptStep, 'id'>): Promise<number>;
  dropStep(id: number): Promise<void>;
  pages(): Promise<KeptPage[]>;
  addPage(page: Omit<KeptPage, 'id'>): Promise<number>;
  putPage(page: KeptPage): Promise<void>;
  dropPage(id: number): Promise<void>;
  files(): Promise<KeptFile[]>;
  putFile(file: KeptFile): Promise<void>;
  dropFile(path: string): Promise<void>;
}

/** What outlives the page. A change is done whole or not at all, and no other page comes between. */
export interface Store {
  change<T>(work: (inside: Inside) => Promise<T>): Promise<T>;
}
