export { linesOf } from './lines.ts';
export { planeGroup } from './plane.ts';
