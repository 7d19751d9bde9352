import { planCloth } from '../cloth/plan.ts';
import type { Layout } from '../fit/layout.ts';
import type { Job } from '../job/job.ts';

/** What layout.json says of a floor cloth: sizes across and along the work, lengths in mm. */
export function clothEntries(job: Job, _site: unknown, layout: Layout): Record<string, unknown> {
  const { cloth } = job;
  if (!cloth) return {};
  const { hem, corners, trim, swatch, rolls, waste } = cloth;
  const { finished, hemmed, primed, way, exact, cut, choices, needed } = planCloth(layout, cloth, job);
  return {
    cloth: {
      hem,
      corners,
      trim,
      ...(swatch ? { shrinkage: swatch } : {}),
      rolls,
      waste,
      finished,
      hemmed,
      primed,
      rollLies: way,
      exact,
      cut,
      choices: choices.map((one) => ({
        roll: one.roll,
        rollLies: one.way,
        across: one.takes.across,
        along: one.takes.along,
        buy: one.buy,
        waste: one.waste,
      })),
      ...(needed === undefined ? {} : { needed }),
    },
  };
}
