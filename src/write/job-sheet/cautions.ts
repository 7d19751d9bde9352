import type { Job } from '../../job/job.ts';
import type { Block } from './block.ts';

interface Caution {
  what: string;
  words: string;
}

/** The first year in which no lead was to be put into paint for US houses (US EPA, 40 CFR 745.83). */
const LEAD_FREE = 1978;

// US EPA, questions and answers on 40 CFR 745.83: housing built before 1978, more than 6 square feet a room.
const LEAD: Caution = {
  what: 'Old paint',
  words:
    'A house built before 1978 may have lead in its paint: take it that it has until a test says otherwise (other countries have other years). Do not sand, scrape or heat it. Ask a certified renovator or your local authority first; in the US, rules for renovation apply from 6 square feet of disturbed paint in a room.',
};
const NEWER = (built: number): Caution => ({
  what: 'Old paint',
  words: `The house was built in ${built}, after lead went out of US house paint in 1978; older boards or doors may have come in since, and other countries have other years. Test before you sand. Wear a dust mask, and vacuum rather than sweep.`,
});
// US EPA, Healthy Indoor Painting Practices.
const AIR: Caution = {
  what: 'Air',
  words:
    'Keep windows open and a fan blowing outwards while you work and for two or three days after. Keep children, and anyone who has trouble breathing, away. Solvents and clear coats: do what the can says, no flame near them, and dry oily rags spread flat out of doors.',
};
const BLADES: Caution = {
  what: 'Blades',
  words:
    'A sharp blade, cutting away from yourself, the other hand never in its path. Draw it in when it is idle; used blades go into a hard container. Wear eye protection.',
};
// ANSI A326.3 asks for a wet test of level hard floors and says itself that passing it is no promise; ADA Standards 302.1 sets no number.
const SLIP: Caution = {
  what: 'Slips',
  words:
    'Paint and clear coat change the grip of a floor, and it is slippery when wet. Try a patch with water on it, and ask the maker of the coating about a grip additive. Plan your way out before you paint, and close the way to others.',
};
// ADA Standards 302.2 and 303: a change of level up to 1/4 in may be upright, up to 1/2 in bevelled.
const EDGE: Caution = {
  what: 'Edges',
  words:
    'A cloth that slides or curls trips people. Lay it on a non-slip pad, keep its edges flat, and keep it out of doorways and off stairs.',
};
// Common practice, no source.
const STAIRS: Caution = {
  what: 'Stairs',
  words:
    'A fall on stairs is worse than one on a floor. Paint so that a dry way up and down stays open, mark it, light it, and tell everyone in the house. Grip matters most at the front edge of a tread.',
};
// Common practice, no source.
const KNEES: Caution = {
  what: 'Body',
  words: 'Knee pads, and a break every half hour. Lift nothing heavy across wet paint.',
};

function listFor({ surface, underfoot }: Pick<Job, 'surface' | 'underfoot'>): Caution[] {
  if (surface === 'floor-cloth') return [AIR, SLIP, EDGE];
  const built = underfoot?.built;
  const paint = built !== undefined && built >= LEAD_FREE ? NEWER(built) : LEAD;
  return [paint, AIR, SLIP, ...(surface === 'stairs' ? [STAIRS] : []), KNEES];
}

/** What can hurt, and whom to ask. Never left out, wherever the work is. */
export const cautions = (job: Pick<Job, 'surface' | 'underfoot'>, cut: boolean): Block => ({
  kind: 'care',
  items: [...listFor(job), ...(cut ? [BLADES] : [])],
  last: 'General information only. Local codes, the product label and licensed practitioners come first.',
});
