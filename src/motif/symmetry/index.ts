export { friezeGroup } from './frieze.ts';
export { FRIEZE_GROUPS, type FriezeGroup, PLANE_GROUPS, type PlaneGroup } from './groups.ts';
export { linesOf } from './lines.ts';
export { planeGroup } from './plane.ts';
