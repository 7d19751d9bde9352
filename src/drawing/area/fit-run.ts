import { fitRun as fitWithin } from '../../geometry/fit-run.ts';
import type { Point, Side } from '../../geometry/path.ts';
import { NEAR } from '../limits.ts';

export { headingIn, headingOut, unit } from '../../geometry/fit-run.ts';

/** Cubics through a run of points that lie on a smooth line, within `NEAR` of each of them. */
export const fitRun = (points: Point[], leave: Point, arrive: Point): Side[] => fitWithin(points, leave, arrive, NEAR);
