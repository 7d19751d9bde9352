import type { Box } from '../geometry/path.ts';
import type { PlacedStep } from '../stairs/flight.ts';
import { SOFT } from './ink.ts';
import type { Sketch } from './sketch.ts';

const SAME = 1e-6;

/** What stays plain beside the panel, step by step to the right of the flight: in columns, each reading only where it differs from the step below. */
export function drawStrips(sketch: Sketch, steps: PlacedStep[], flight: Box, length: (mm: number) => string): void {
  const { size } = sketch;
  const risers = steps[0]!.kind === 'riser';
  const even = steps.every(({ margins }) => Math.abs(margins.below - margins.above) < SAME);
  const rises = risers ? 'high' : 'deep';
  const columns: { head: string; of: (step: PlacedStep) => number }[] = [
    { head: 'wide', of: ({ across }) => across },
    { head: rises, of: ({ along }) => along },
    { head: 'plain at each side', of: ({ margins }) => margins.sides },
    ...(even
      ? [{ head: risers ? 'below and above' : 'in front and behind', of: ({ margins }: PlacedStep) => margins.below }]
      : [
          { head: risers ? 'below' : 'in front', of: ({ margins }: PlacedStep) => margins.below },
          { head: risers ? 'above' : 'behind', of: ({ margins }: PlacedStep) => margins.above },
        ]),
  ];
  const small = 0.8 * size;
  let x = flight.right + 1.6 * size;
  for (const { head, of } of columns) {
    const texts = steps.map((step) => length(of(step)));
    const wide = Math.max(sketch.width(head, small), ...texts.map((text) => sketch.width(text)));
    sketch.label(head, [x + wide / 2, flight.top - 0.9 * size], 'middle', { size: small, fill: SOFT });
    steps.forEach((step, at) => {
      if (at > 0 && texts[at] === texts[at - 1]) return;
      const { top, bottom } = step.outline;
      sketch.label(texts[at]!, [x + wide / 2, (top + bottom) / 2], 'middle');
    });
    x += wide + 1.3 * size;
  }
}
