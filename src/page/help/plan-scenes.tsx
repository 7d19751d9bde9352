import { Tape } from './tape.tsx';

/** Of a room seen from above, 320 × 240: its inner faces lie at 30 to 290 and 30 to 210; far is up. Slightly out of square, as rooms are. */
const NL = [32, 208] as const;
const NR = [288, 210] as const;
const FR = [286, 32] as const;
const FL = [30, 30] as const;

const WALLS = `M 14 14 H 306 V 226 H 14 Z M ${FL.join(' ')} L ${NL.join(' ')} L ${NR.join(' ')} L ${FR.join(' ')} Z`;

function Boards() {
  return (
    <>
      {Array.from({ length: 9 }, (_, n) => (
        <line key={n} class="board" x1={56 + 26 * n} y1="32" x2={56 + 26 * n} y2="208" />
      ))}
    </>
  );
}

function Names() {
  return (
    <>
      <text x="160" y="202" text-anchor="middle">
        near
      </text>
      <text x="160" y="48" text-anchor="middle">
        far
      </text>
      <text x="40" y="132">
        left
      </text>
      <text x="280" y="132" text-anchor="end">
        right
      </text>
    </>
  );
}

function Door() {
  return (
    <>
      <rect x="96" y="207" width="84" height="20" fill="var(--card)" />
      <rect class="casing" x="86" y="203" width="12" height="26" />
      <rect class="casing" x="178" y="203" width="12" height="26" />
    </>
  );
}

const Room = () => (
  <>
    <Boards />
    <path class="wall" fill-rule="evenodd" d={WALLS} />
  </>
);

export const plans = {
  wall: {
    says: 'Lay the tape on the floor along the wall, hook in one corner, and read it in the other. Where there is a baseboard, measure to its face, for that is where the paint ends; do it the same way for every wall.',
    alt: 'A room from above. The tape lies along the near wall, its hook in the near left corner, read in the near right corner: 12 feet 1/4 inch.',
    drawing: () => (
      <>
        <Room />
        <text x="160" y="48" text-anchor="middle">
          far
        </text>
        <Tape from={[32, 200]} to={[288, 202]} reads={`12' 1/4"`} />
        <text x="160" y="170" text-anchor="middle">
          near wall
        </text>
      </>
    ),
  },
  plain: {
    says: 'Two readings, through the middle of the room: from the left wall to the right one, and from the near wall to the far one.',
    alt: 'A room from above. One tape lies through its middle from left to right, 3.61 m; the other from near to far, 4.27 m.',
    drawing: () => (
      <>
        <Room />
        <Tape from={[31, 150]} to={[287, 150]} reads="3.61 m" at={0.75} />
        <Tape from={[150, 209]} to={[150, 31]} reads="4.27 m" at={0.65} />
      </>
    ),
  },
  diagonal: {
    says: 'Hook in one corner, across the floor to the corner opposite, pulled tight. Both diagonals together prove every other reading.',
    alt: 'A room from above. The tape runs from the near left corner to the far right corner: 15 feet 7 1/2 inches.',
    drawing: () => (
      <>
        <Room />
        <Names />
        <Tape from={[33, 207]} to={[285, 34]} reads={`15' 7 1/2"`} />
      </>
    ),
  },
  opening: {
    says: 'From the corner along the wall to the nearer outer edge of the casing, then, without moving the hook, to the other outer edge.',
    alt: 'A room from above with a door in its near wall. The tape is hooked in the near left corner and read at both outer edges of the casing: 14 1/2 inches and 46 3/4 inches.',
    drawing: () => (
      <>
        <Room />
        <Door />
        <Tape from={[32, 192]} to={[86, 192]} reads={'14 1/2"'} />
        <Tape from={[32, 152]} to={[190, 152]} reads={'46 3/4"'} />
        <path class="fold" d="M 86 140 V 205 M 190 140 V 205" />
      </>
    ),
  },
  obstacle: {
    says: 'From the corner, along one wall to where the thing begins and where it ends; then along the other wall the same.',
    alt: 'A room from above with a hearth at the far wall. From the far left corner along the far wall it begins at 34 inches and ends at 82; along the left wall it reaches 15 1/2 inches into the room.',
    drawing: () => (
      <>
        <Room />
        <rect class="thing" x="104" y="31" width="100" height="42" />
        <text x="154" y="57" text-anchor="middle">
          hearth
        </text>
        <Tape from={[31, 88]} to={[104, 88]} reads={'34"'} other />
        <Tape from={[31, 130]} to={[204, 130]} reads={'82"'} other />
        <path class="fold" d="M 104 74 V 96 M 204 74 V 140" />
        <Tape from={[226, 33]} to={[226, 73]} reads={'15 1/2"'} />
      </>
    ),
  },
  table: {
    says: 'With the table where it will stand: from the corner along two walls to where its top begins and ends, dropped to the floor with a plumb line or a straight stick.',
    alt: 'A room from above with a table in it. From the near left corner along the near wall it begins at 40 inches and ends at 76 inches.',
    drawing: () => (
      <>
        <Room />
        <rect class="thing" x="110" y="70" width="96" height="90" />
        <text x="158" y="120" text-anchor="middle">
          table
        </text>
        <path class="fold" d="M 110 160 V 204 M 206 160 V 204" />
        <Tape from={[32, 168]} to={[110, 168]} reads={'40"'} />
        <Tape from={[32, 196]} to={[206, 196]} reads={'76"'} at={0.7} />
      </>
    ),
  },
  boards: {
    says: 'Choose one joint between two boards that runs the whole room. Measure to it twice, as far apart as you can: each time from the corner along both walls.',
    alt: 'A room from above with its floor boards. One joint is measured near the near wall and again near the far wall: 24 inches and 24 3/8 inches from the left wall.',
    drawing: () => (
      <>
        <Room />
        <line class="line" x1="134" y1="32" x2="134" y2="208" />
        <Tape from={[32, 186]} to={[134, 186]} reads={'24"'} />
        <Tape from={[31, 60]} to={[134, 60]} reads={'24 3/8"'} other />
      </>
    ),
  },
  run: {
    says: 'On the floor, in the middle of the openings: hook at the near threshold, straight to the far threshold, where the runner shall begin and end.',
    alt: 'A passage from above with an opening at each end. The tape lies on the floor down the middle, from the near threshold to the far one: 17 feet 9 7/16 inches.',
    drawing: () => (
      <>
        <path class="wall" d="M 14 40 H 306 V 56 H 14 Z M 14 184 H 306 V 200 H 14 Z" />
        {Array.from({ length: 5 }, (_, n) => (
          <line key={n} class="board" x1="14" y1={76 + 22 * n} x2="306" y2={76 + 22 * n} />
        ))}
        <path
          class="wall"
          d="M 14 56 H 30 V 84 H 14 Z M 14 156 H 30 V 184 H 14 Z M 290 56 H 306 V 88 H 290 Z M 290 152 H 306 V 184 H 290 Z"
        />
        <path
          class="casing"
          d="M 26 76 H 36 V 88 H 26 Z M 26 152 H 36 V 164 H 26 Z M 284 80 H 294 V 92 H 284 Z M 284 148 H 294 V 160 H 284 Z"
        />
        <Tape from={[22, 120]} to={[298, 120]} reads={`17' 9 7/16"`} />
        <text x="44" y="178">
          near
        </text>
        <text x="276" y="178" text-anchor="end">
          far
        </text>
      </>
    ),
  },
  sides: {
    says: 'The same twice more, at the left and at the right side of the openings. The runner takes the shortest of the three, so that it lies flat at both thresholds.',
    alt: 'A passage from above. Two tapes lie from threshold to threshold, one at the left side of the openings and one at the right.',
    drawing: () => (
      <>
        <path class="wall" d="M 14 40 H 306 V 56 H 14 Z M 14 184 H 306 V 200 H 14 Z" />
        <path
          class="wall"
          d="M 14 56 H 30 V 84 H 14 Z M 14 156 H 30 V 184 H 14 Z M 290 56 H 306 V 84 H 290 Z M 290 156 H 306 V 184 H 290 Z"
        />
        <Tape from={[22, 94]} to={[300, 94]} reads={`left, 12' 10 1/8"`} />
        <Tape from={[22, 146]} to={[300, 146]} reads={`right, 12' 10 3/8"`} other />
      </>
    ),
  },
  walls: {
    says: 'Walk round the room with the wall at your left hand, beginning in the near left corner. Measure every wall from corner to corner. Where you turn left at its end, as round a chimney breast, the corner is outside; where you turn right, inside.',
    alt: 'A room with a chimney breast from above. Arrows follow the walls clockwise from the near left corner; the two corners of the breast that point into the room are marked outside.',
    drawing: () => (
      <>
        <path
          class="wall"
          fill-rule="evenodd"
          d="M 14 14 H 306 V 226 H 14 Z M 30 30 H 110 V 66 H 200 V 30 H 290 V 210 H 30 Z"
        />
        <Tape from={[38, 208]} to={[38, 32]} reads={`1: 13' 1/2"`} other />
        <path class="line" d="M 46 44 H 96 M 90 39 l 8 5 l -8 5 M 118 78 H 192 M 186 73 l 8 5 l -8 5" />
        <text x="70" y="60" text-anchor="middle">
          2
        </text>
        <text x="155" y="98" text-anchor="middle">
          4
        </text>
        <text x="118" y="118" text-anchor="middle">
          outside
        </text>
        <text x="204" y="118" text-anchor="middle">
          outside
        </text>
        <path class="fold" d="M 112 68 L 116 104 M 198 68 L 202 104" />
        <text x="230" y="60">
          inside
        </text>
      </>
    ),
  },
  wallDoor: {
    says: 'From the corner where this wall begins, as you walk with the wall at your left hand, to the first outer edge of the casing and on to the second, without moving the hook.',
    alt: 'A room from above; walking clockwise the near wall begins at the near right corner. The tape is hooked there and read at both edges of the door casing: 26 inches and 60 1/2 inches.',
    drawing: () => (
      <>
        <Room />
        <Door />
        <Tape from={[287, 190]} to={[190, 190]} reads={'26"'} other />
        <Tape from={[287, 150]} to={[86, 150]} reads={'60 1/2"'} other />
        <path class="fold" d="M 86 140 V 205 M 190 140 V 205" />
      </>
    ),
  },
  offWall: {
    says: 'From the wall straight out to where the edge of the rug shall lie, where the two are nearest.',
    alt: 'A room from above. The rug lies 12 inches off the left wall.',
    drawing: () => (
      <>
        <Room />
        <rect class="cloth" x="90" y="66" width="110" height="110" />
        <text x="145" y="126" text-anchor="middle">
          rug
        </text>
        <Tape from={[31, 120]} to={[90, 120]} reads={'12"'} />
      </>
    ),
  },
};
