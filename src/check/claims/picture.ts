import { type Claim, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { dueShade, meanShade, ownColours, type Shade, shadeOfEdges } from '../measure/shades.ts';
import type { Plan } from '../read/plan.ts';
import { type Picture, readPng } from '../read/png.ts';

const FILE = 'plan.png';
const SHAPE = 'the picture has the shape of the plan';
/** How far the shape of the picture may be off, pixels on its longer side. */
const PIXELS = 1;
/** How far a shade may be off, of 255: lines and words are drawn over the paint. */
const SHADE = 6;
/** Share of the pieces, or the one, that may show another colour because a line or a word is drawn over them. */
const COVERED = 0.05;
/** Pieces looked at, spread over all of them. */
const MOST_PIECES = 3000;

export const proof: Proof = {
  claims: 'plan.png shows the plan: shape, mean shade, colour of every piece',
  files: ['plan.png', 'plan.svg'],
  method: 'pixels compared with the outlines',
  tolerance: '1 pixel; 6 of 255 in shade, and a sixth of the contrast by the share of pixels that edges cross',
};

/** The picture is that of the plan: its shape, its mean shade, and the colour of every piece. */
export default async function picture(set: FileSet): Promise<Claim[]> {
  const content = set.content(FILE);
  const found = await set.bytes(FILE, readPng);
  if (!found) return [unproven(FILE, SHAPE, content === undefined ? `${FILE} is missing` : 'it is text')];
  if (!found.ok) return [unproven(FILE, SHAPE, found.says)];
  const plan = set.plan();
  if (!plan.ok) return [unproven(FILE, SHAPE, plan.says)];
  const { width, height } = found.value;
  const { view } = plan.value.svg;
  const off = Math.abs(width * view.height - height * view.width) / Math.max(view.width, view.height);
  const allowed = `${view.width} : ${view.height}, to ${PIXELS} pixel`;
  return [
    stated(FILE, SHAPE, off <= PIXELS, `${width} × ${height} pixels`, allowed),
    ...shades(plan.value, found.value),
  ];
}

function shades(plan: Plan, picture: Picture): Claim[] {
  const { view } = plan.svg;
  const [due, mean] = [dueShade(plan), meanShade(picture, view, plan.ground)];
  const off = Math.max(...due.map((channel, i) => Math.abs(channel - mean[i]!)));
  const allowed = Math.round(SHADE + shadeOfEdges(plan, view.width / picture.width));
  const step = Math.ceil(plan.painted.length / MOST_PIECES);
  const { own, of } = ownColours(
    picture,
    view,
    plan.painted.filter((_, at) => at % step === 0),
    SHADE,
  );
  const least = of - Math.max(1, Math.floor(COVERED * of));
  const says = (shade: Shade) => shade.map((channel) => Math.round(channel)).join(', ');
  return [
    stated(
      FILE,
      'the picture has the mean shade of the plan',
      off <= allowed,
      says(mean),
      `${says(due)}, to ${allowed}`,
    ),
    stated(
      FILE,
      'every piece shows its own colour in the picture',
      own >= least,
      `${own} of ${of}`,
      `${least} or more`,
    ),
  ];
}
