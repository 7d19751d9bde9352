type Point = readonly [number, number];

interface TapeProps {
  from: Point;
  to: Point;
  /** What the tape shows. */
  reads?: string;
  /** Puts the reading on the other side of the blade. */
  other?: boolean;
  /** Where along the blade the reading stands, from 0 to 1. */
  at?: number;
}

/** A tape from its hook to its case, which is read where the case is. Drawing units. */
export function Tape({ from: [x0, y0], to: [x1, y1], reads, other = false, at = 0.5 }: TapeProps) {
  const length = Math.hypot(x1 - x0, y1 - y0);
  const turn = (Math.atan2(y1 - y0, x1 - x0) * 180) / Math.PI;
  const side = other ? 1 : -1;
  const flip = Math.abs(turn) > 90;
  const marks = Array.from({ length: Math.max(0, Math.floor(length / 10) - 2) }, (_, n) => (n + 1) * 10);
  const width = (reads?.length ?? 0) * 7 + 8;
  return (
    <g transform={`translate(${x0} ${y0}) rotate(${turn})`}>
      <line class="blade" x1="0" y1="0" x2={length} y2="0" />
      {marks.map((x) => (
        <line key={x} x1={x} y1="-2.5" x2={x} y2={x % 50 === 0 ? 2.5 : 0} stroke="var(--card)" stroke-width="1" />
      ))}
      <path class="hook" d="M 0 -8 V 8" />
      <rect class="body" x={length - 20} y="-9" width="20" height="18" rx="3" />
      {reads && (
        <g transform={`translate(${length * at} ${side * 18}) rotate(${flip ? 180 : 0})`}>
          <rect class="under" x={-width / 2} y="-9" width={width} height="18" rx="2" />
          <text text-anchor="middle" y="5">
            {reads}
          </text>
        </g>
      )}
    </g>
  );
}
