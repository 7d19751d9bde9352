import type { Paper } from '../../job/job.ts';
import { inches } from '../../units/index.ts';

/** Width and height in mm. */
export interface Size {
  across: number;
  along: number;
}

/** Upright. A sizes: ISO 216; the others: 8 1/2 × 11, 8 1/2 × 14 and 11 × 17 in, as CSS Paged Media names them. */
export const PAPER: Record<Paper, Size> = {
  letter: { across: inches(8.5), along: inches(11) },
  A4: { across: 210, along: 297 },
  legal: { across: inches(8.5), along: inches(14) },
  A3: { across: 297, along: 420 },
  tabloid: { across: inches(11), along: inches(17) },
};

/** What a printer cannot reach at the edges of the paper, 1/4 in (common practice, no source). */
export const MARGIN = inches(1 / 4);
/** Room at the foot of a page for its name and its scale, mm. */
const STRIP = 11;

/** The part of a page that the drawing may fill, mm of paper from the top left corner. */
export const areaOf = (page: Size) => ({
  left: MARGIN,
  top: MARGIN,
  right: page.across - MARGIN,
  bottom: page.along - MARGIN - STRIP,
});

export const turned = ({ across, along }: Size): Size => ({ across: along, along: across });
