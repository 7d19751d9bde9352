import type { Point } from '../../geometry/path.ts';
import { look } from '../state/answer.ts';
import { bothWays, type Reading, readingOf } from './reading.ts';
import { aim, measuring, sheetSeen } from './state.ts';

/** Sets the next point with the tape; a third begins anew. */
export function setPoint(point: Point): void {
  const points = measuring.value;
  if (!points) return;
  measuring.value = points.length < 2 ? [...points, point] : [point];
  if (measuring.value.length === 2) aim.value = undefined;
}

/** The points that are set, and after them the one that is aimed at. */
function ends(): Point[] {
  const points = measuring.value ?? [];
  return [...points, ...(aim.value && points.length < 2 ? [aim.value.at] : [])];
}

function readingNow(): Reading | undefined {
  const [from, to] = ends();
  const seen = look.value;
  return seen && from && to ? readingOf(from, to, seen.job) : undefined;
}

/** The tape in words: between two points, or where the cross is. */
export function tapeWords(): string {
  const seen = look.value;
  if (!measuring.value || !seen) return '';
  const reading = readingNow();
  if (reading) return `${reading.length} from point to point, ${reading.across} across, ${reading.along} along`;
  const [cross] = ends();
  if (!cross) return '';
  const on = sheetSeen.value;
  const work = on ? { left: 0, bottom: on.along } : seen.drawing.work;
  const [left, near] = [cross[0] - work.left, work.bottom - cross[1]].map((mm) => bothWays(mm, seen.job));
  return `Cross ${left} from the left edge, ${near} from the ${on ? 'lower' : 'near'} edge${aim.value?.caught ? ', on the drawing' : ''}`;
}

/** What the tape shows between the two points. */
export function TapeReading() {
  if (!measuring.value) return null;
  const reading = readingNow();
  if (!reading)
    return (
      <p class="tape">
        {measuring.value.length === 0
          ? 'Press on the first point, or move the cross with the arrow keys and press Enter.'
          : 'Now the second point.'}
      </p>
    );
  const rows = [
    ['from point to point', reading.length],
    ['across', reading.across],
    ['along', reading.along],
  ] as const;
  return (
    <dl class="tape">
      {rows.map(([what, mm]) => (
        <div key={what}>
          <dt>{what}</dt>
          <dd>{mm}</dd>
        </div>
      ))}
    </dl>
  );
}
