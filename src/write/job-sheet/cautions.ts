import type { Job } from '../../job/job.ts';

type Caution = [what: string, words: string];

// US EPA, questions and answers on 40 CFR 745.83: housing built before 1978, more than 6 square feet a room.
const LEAD: Caution = [
  'Old paint',
  'A house built before 1978 may have lead in its paint: take it that it has until a test says otherwise (other countries have other years). Do not sand, scrape or heat it. Ask a certified renovator or your local authority first; in the US, rules for renovation apply from 6 square feet of disturbed paint in a room.',
];
// US EPA, Healthy Indoor Painting Practices.
const AIR: Caution = [
  'Air',
  'Keep windows open and a fan blowing outwards while you work and for two or three days after. Keep children, and anyone who has trouble breathing, away. Solvents and clear coats: do what the can says, no flame near them, and dry oily rags spread flat out of doors.',
];
const BLADES: Caution = [
  'Blades',
  'A sharp blade, cutting away from yourself, the other hand never in its path. Draw it in when it is idle; used blades go into a hard container. Wear eye protection.',
];
const SLIP: Caution = [
  'Slips',
  'Paint and clear coat change the grip of a floor, and it is slippery when wet. Try a patch with water on it, and ask the maker of the coating about a grip additive. Plan your way out before you paint, and close the way to others.',
];
// ADA Standards 302.2 and 303: a change of level up to 1/4 in may be upright, up to 1/2 in bevelled.
const EDGE: Caution = [
  'Edges',
  'A cloth that slides or curls trips people. Lay it on a non-slip pad, keep its edges flat, and keep it out of doorways and off stairs.',
];

/** What can hurt, and whom to ask. Never left out, wherever the work is. */
export function cautions(job: Pick<Job, 'surface'>, cut: boolean): string {
  const list = [...(job.surface === 'floor-cloth' ? [AIR, SLIP, EDGE] : [LEAD, AIR, SLIP]), ...(cut ? [BLADES] : [])];
  const rows = list.map(([what, words]) => `<dt>${what}</dt><dd>${words}</dd>`).join('');
  return `<section class="care"><h2>Take care</h2><dl>${rows}</dl><p class="last">General information only. Local codes, the product label and licensed practitioners come first.</p></section>`;
}
