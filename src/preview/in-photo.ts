import { boxHeight, boxWidth } from '../geometry/measure.ts';
import { fail, good, type Result } from '../issue.ts';
import type { Corner, Job } from '../job/job.ts';
import type { FloorPhoto } from '../job/preview.ts';
import type { Raster } from '../picture/raster.ts';
import { writeLength } from '../units/index.ts';
import { floorToPhoto } from './corners.ts';
import { after, type Homography, mapped, type Spot } from './homography.ts';
import { layInto, shareSeen } from './lay.ts';
import type { Layers } from './layers.ts';

type Laying = Pick<Layers, 'box' | 'step' | 'width' | 'height'>;
type PhotoSize = Pick<Raster, 'width' | 'height'>;

/** From pixels of the work to mm of the known rectangle on the floor. */
function workToFloor({ box, step, height }: Laying, { rectangle, at }: FloorPhoto): Homography {
  const place = at ?? {
    across: (rectangle.across - boxWidth(box)) / 2,
    along: (rectangle.along - boxHeight(box)) / 2,
  };
  // Rows have the height that divides the work evenly, which is nearly the step.
  const row = boxHeight(box) / height;
  return [step, 0, place.across, 0, -row, place.along + boxHeight(box), 0, 0, 1];
}

/** How far an edge of the work may move in the photo when one corner of the rectangle is read a pixel off, in pixels. */
function trembling(photo: FloorPhoto, size: PhotoSize, layers: Laying, right: Homography): number {
  const corners: Spot[] = [
    [0, 0],
    [layers.width, 0],
    [layers.width, layers.height],
    [0, layers.height],
  ];
  const onWork = workToFloor(layers, photo);
  const seen = corners.filter(([x, y]) => right[6] * x + right[7] * y + right[8] > 0);
  let most = 0;
  for (const name of Object.keys(photo.corners) as Corner[]) {
    const [left, top] = photo.corners[name];
    for (const moved of [[left + 1, top] as const, [left, top + 1] as const]) {
      const found = floorToPhoto(
        { ...photo, corners: { ...photo.corners, [name]: moved } },
        { width: size.width + 1, height: size.height + 1 },
      );
      if (!found.ok) continue;
      const off = after(found.value, onWork);
      for (const corner of seen) {
        const [[x, y], [u, v]] = [mapped(right, corner), mapped(off, corner)];
        if (x >= 0 && y >= 0 && x <= size.width && y <= size.height) most = Math.max(most, Math.hypot(u - x, v - y));
      }
    }
  }
  return most;
}

/** A pixel off at a corner of the rectangle should stay a few pixels at the work. */
const TREMBLES = 6;

/**
 * The work laid into a photo of the floor.
 * @param work as it is painted, pixel for pixel what `layers` tells of
 * @param shown the photo as it is shown, which may be smaller than it is
 * @param size of the photo itself, in whose pixels its corners are told
 * Issues: those of `floorToPhoto`, and `preview/not-seen`.
 */
export function inPhoto(
  layers: Laying,
  work: Raster,
  job: Pick<Job, 'units' | 'step'>,
  photo: FloorPhoto,
  shown: Raster,
  size: PhotoSize,
): Result<{ floor: Raster; says: string[] }> {
  const toPhoto = floorToPhoto(photo, size);
  if (!toPhoto.ok) return toPhoto;
  const whole = after(toPhoto.value, workToFloor(layers, photo));
  const share = shareSeen(size, work, whole);
  if (share === 0)
    return fail(
      'preview/not-seen',
      ['preview', 'photo', 'at'],
      `laid there, the work (${[boxWidth(layers.box), boxHeight(layers.box)].map((mm) => writeLength(mm, job.units, job.step)).join(' by ')}) lies wholly outside the photo`,
      'how far across and along its near left corner lies from that of the rectangle; without `at` it lies centred on the rectangle',
    );
  const says: string[] = [];
  if (share < 0.995) says.push(`${Math.max(1, Math.round(100 * share))} % of the work lies inside the photo.`);
  const trembles = trembling(photo, size, layers, whole);
  if (trembles > TREMBLES)
    says.push(
      `The rectangle is small beside the work: one corner read a pixel off moves an edge of the work by ${Math.round(trembles)} pixels. A larger rectangle shows it truer.`,
    );
  const by: Homography = [shown.width / size.width, 0, 0, 0, shown.height / size.height, 0, 0, 0, 1];
  return good({ floor: layInto(shown, work, after(by, whole), photo.light).picture, says });
}
