import type { Box, Point } from '../../geometry/path.ts';
import type { RoomView } from '../../site/room-view.ts';
import { RED } from '../ink.ts';
import { formatMm } from '../number.ts';
import type { Sketch } from '../sketch.ts';
import { element } from '../svg.ts';

/** The line the work is laid along, as a chain line from beyond one wall to beyond the other. @param drawn how far other lines reach */
export function drawRoomAxis(sketch: Sketch, { axis }: RoomView, drawn: Box): void {
  const { size } = sketch;
  const points: Point[] = [
    [0, Math.max(drawn.bottom, axis.near[1]) + 0.6 * size],
    [0, Math.min(drawn.top, axis.far[1]) - 0.6 * size],
  ];
  const d = `M0 ${formatMm(points[0]![1])}V${formatMm(points[1]![1])}`;
  const line = {
    d,
    'stroke-dasharray': [1.5, 0.3, 0.25, 0.3].map((share) => formatMm(share * size)).join(' '),
  };
  sketch.add(
    element('path', { ...line, stroke: '#fffaf0', 'stroke-opacity': 0.8, 'stroke-width': formatMm(size * 0.14) }),
  );
  sketch.add(
    element('path', { 'data-axis': 'axis', ...line, stroke: RED, 'stroke-width': formatMm(size * 0.07) }),
    ...points,
  );
  sketch.label('axis', [0.35 * size, points[1]![1] + 0.1 * size], 'start', { size: 0.8 * size, fill: RED });
}
