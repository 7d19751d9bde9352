import { Tape } from './tape.tsx';

/** A flight of two steps, seen from the side and a little from the front. */
function Steps() {
  return (
    <>
      <path class="thing" d="M 30 210 V 140 H 250 V 210 Z" />
      <path class="cloth" d="M 30 140 L 70 104 H 290 L 250 140 Z" />
      <path class="thing" d="M 70 104 V 44 H 290 V 104 Z" />
      <path class="cloth" d="M 70 44 L 100 18 H 310 L 290 44 Z" />
      <path class="line" d="M 250 210 L 290 176 V 104 M 26 140 H 254 M 66 44 H 294" />
    </>
  );
}

export const others = {
  casing: {
    says: 'Over the casing: from the outer edge of the trim on one side of the door to the outer edge on the other, low down at the floor.',
    alt: 'A doorway from the front. The tape lies along the floor from the outer edge of the left casing to the outer edge of the right one: 31 1/4 inches.',
    drawing: () => (
      <>
        <rect x="10" y="10" width="300" height="200" fill="var(--rule)" />
        <path class="casing" fill-rule="evenodd" d="M 76 210 V 26 H 244 V 210 H 222 V 48 H 98 V 210 Z" />
        <rect x="98" y="48" width="124" height="162" fill="var(--card)" />
        <line class="line" x1="10" y1="210" x2="310" y2="210" />
        <Tape from={[76, 192]} to={[244, 192]} reads={'31 1/4"'} />
      </>
    ),
  },
  riser: {
    says: 'Across: along the riser from side to side. High: from the tread below straight up to the underside of the nosing above. Stairs differ, so measure each.',
    alt: 'Two steps. One tape lies across the lower riser, 35 7/8 inches; another stands upright from the floor to the nosing above, 7 5/8 inches.',
    drawing: () => (
      <>
        <Steps />
        <Tape from={[30, 178]} to={[250, 178]} reads={'35 7/8"'} />
        <Tape from={[282, 102]} to={[282, 46]} reads={'7 5/8"'} />
      </>
    ),
  },
  tread: {
    says: 'Across: from side to side. Deep: from the front of the nosing back to the next riser.',
    alt: 'Two steps. One tape lies across the lower tread, 36 inches; another from the front of its nosing back to the next riser, 10 1/4 inches.',
    drawing: () => (
      <>
        <Steps />
        <Tape from={[50, 124]} to={[270, 124]} reads={'36"'} at={0.25} other />
        <Tape from={[180, 141]} to={[218, 106]} />
        <path class="fold" d="M 219 106 H 254" />
        <rect class="under" x="196" y="72" width="58" height="18" rx="2" />
        <text x="225" y="86" text-anchor="middle">
          10 1/4"
        </text>
      </>
    ),
  },
  cloth: {
    says: 'The finished size, hem turned under: what lies on the floor in the end. What is cut is larger, and is worked out for you.',
    alt: 'A finished cloth from above. One tape lies across it, 28 inches, one along it, 41 inches; a dashed line round it shows the canvas that is turned under.',
    drawing: () => (
      <>
        <rect class="fold" x="76" y="18" width="168" height="204" />
        <rect class="cloth" x="92" y="34" width="136" height="172" />
        <Tape from={[92, 160]} to={[228, 160]} reads={'28"'} at={0.6} />
        <Tape from={[140, 206]} to={[140, 34]} reads={'41"'} />
      </>
    ),
  },
  rug: {
    says: 'Mark two edges on the floor with bits of tape, walk round them, and measure between: border and all.',
    alt: 'A rug in a room, from above. One tape lies across it from outer edge to outer edge of its border, one along it.',
    drawing: () => (
      <>
        <rect class="wall" x="14" y="14" width="292" height="212" />
        <rect x="28" y="28" width="264" height="184" fill="var(--card)" />
        <rect class="cloth" x="90" y="52" width="140" height="136" />
        <rect class="line" x="104" y="66" width="112" height="108" />
        <Tape from={[90, 150]} to={[230, 150]} reads={`9'`} at={0.65} />
        <Tape from={[150, 188]} to={[150, 52]} reads={`10'`} />
      </>
    ),
  },
  trial: {
    says: 'Draw a square on a scrap of the same canvas, across and along the roll. Size and prime it as you will the cloth, let it dry, and measure the square again.',
    alt: 'A piece of canvas with a square drawn on it. Before: 20 inches across. After priming a smaller square: 19 3/4 inches across.',
    drawing: () => (
      <>
        <rect class="cloth" x="12" y="40" width="140" height="150" />
        <rect class="line" x="30" y="62" width="104" height="104" />
        <Tape from={[30, 114]} to={[134, 114]} reads={'20"'} />
        <text x="82" y="28" text-anchor="middle">
          before
        </text>
        <rect class="cloth" x="170" y="40" width="140" height="150" />
        <rect class="fold" x="188" y="62" width="104" height="104" />
        <rect class="line" x="192" y="66" width="96" height="96" />
        <Tape from={[192, 114]} to={[288, 114]} reads={'19 3/4"'} />
        <text x="240" y="28" text-anchor="middle">
          primed and dry
        </text>
      </>
    ),
  },
  roll: {
    says: 'The width the canvas is sold in, from selvedge to selvedge; ask the seller, or measure the roll.',
    alt: 'A roll of canvas. The tape lies across it from edge to edge: 54 inches.',
    drawing: () => (
      <>
        <rect class="thing" x="40" y="40" width="240" height="36" rx="18" />
        <rect class="cloth" x="52" y="60" width="216" height="150" />
        <path class="fold" d="M 60 62 V 210 M 260 62 V 210" />
        <Tape from={[52, 140]} to={[268, 140]} reads={'54"'} />
      </>
    ),
  },
};
