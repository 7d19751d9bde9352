import { Words } from './reading.tsx';
import { isMade, type Ticks } from './ticks.ts';
import type { FloorLine, Stop } from './walk.ts';
import { tape } from './words.ts';

/** The tape of one line, drawn to its length: what is made, what is to come, and where one is. */
export function Strip({ line, at, walk, ticks }: { line: FloorLine; at: number; walk: readonly Stop[]; ticks: Ticks }) {
  const stops = walk.filter((stop) => stop.kind === 'mark' && stop.line.name === line.name);
  const end = Math.max(...line.marks.map(({ reads }) => reads)) || 1;
  const made = stops.filter((stop) => isMade(ticks, stop)).length;
  return (
    <figure
      class="strip"
      role="img"
      aria-label={`The tape up to ${tape(end)}: ${made} of ${stops.length} marks made, you are at ${tape(line.marks[at]!.reads)}.`}
    >
      <svg aria-hidden="true" focusable="false">
        <line class="edge" x1="0" x2="100%" y1="8" y2="8" />
        {stops.map((stop, n) => {
          const x = `${(100 * line.marks[n]!.reads) / end}%`;
          const isDone = isMade(ticks, stop);
          return <line key={stop.id} class={isDone ? 'made' : 'open'} x1={x} x2={x} y1="8" y2={isDone ? 32 : 20} />;
        })}
      </svg>
      <span class="here" style={`left: ${(100 * line.marks[at]!.reads) / end}%`} />
      <span class="from">0</span>
      <span class="to">
        <Words>{tape(end)}</Words>
      </span>
    </figure>
  );
}
