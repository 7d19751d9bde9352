import type { Layout } from '../fit/layout.ts';
import type { Issue } from '../issue.ts';
import type { Motif } from '../motif/motif.ts';
import { drawMotif } from '../motif/record.ts';
import { islandIssue } from './issues.ts';
import type { Work } from './work.ts';

const usual = ({ parameters }: Motif): Record<string, number> =>
  Object.fromEntries(Object.entries(parameters).map(([name, { default: value }]) => [name, value]));

const drawsIslands = (motif: Motif, { pitch }: Layout): boolean =>
  drawMotif(motif, pitch, usual(motif)).some(({ pieces }) => pieces.some((piece) => piece.length > 1));

/** What is wrong where a piece has a middle that would fall out; it is put down to the motif that draws such pieces. */
export function islandsIn({ regions, name, path, motif, other }: Work, layout: Layout): Issue | undefined {
  if (!regions.some(({ pieces }) => pieces.some((piece) => piece.length > 1))) return undefined;
  const isOther = other && motif && !drawsIslands(motif, layout) && drawsIslands(other.motif, layout);
  return isOther ? islandIssue(other.motif.name, other.path) : islandIssue(name, path);
}
