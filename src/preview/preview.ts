import type { Drawing } from '../compose/drawing.ts';
import { good, type Result } from '../issue.ts';
import type { Job } from '../job/job.ts';
import type { Raster } from '../picture/raster.ts';
import { smaller } from '../picture/smaller.ts';
import { bareFloor, over, painted } from './flat.ts';
import { inPhoto } from './in-photo.ts';
import { layersOf } from './layers.ts';

/** Pixels of the work from above, at most; the long side of the pictures. */
const [MOST, LONG_SIDE] = [4_000_000, 2400];

export interface Preview {
  /** From straight above. */
  flat: Raster;
  /** In the photo of the floor, where the job has one. */
  floor?: Raster;
  /** What is to be known of them, a sentence each. */
  says: string[];
}

/** Whether no floor is seen through it anywhere. */
function isWhole({ data }: Raster): boolean {
  for (let at = 3; at < data.length; at += 4) if (data[at] !== 255) return false;
  return true;
}

/**
 * Pictures of the work as it will look, in a set of colours and with the looks that the job asks for. Nothing of them goes into files to cut or paint from.
 * @param picture the photo that the job names, where it names one
 * Issues: those of `floorToPhoto`, and `preview/not-seen`.
 */
export async function previewWork(
  { job, drawing }: { job: Job; drawing: Drawing },
  colours: Job['colours'],
  picture?: Raster,
): Promise<Result<Preview>> {
  const layers = await layersOf(drawing, job, colours, MOST);
  const work = painted(layers, job.preview?.looks);
  const photo = job.preview?.photo;
  const laid = photo && picture ? inPhoto(layers, work, job, photo, smaller(picture, LONG_SIDE), picture) : undefined;
  if (laid && !laid.ok) return laid;
  const flat = smaller(isWhole(work) ? work : over(work, bareFloor(layers, job)), LONG_SIDE);
  return good({ flat, ...(laid ? { floor: laid.value.floor } : {}), says: laid?.value.says ?? [] });
}
