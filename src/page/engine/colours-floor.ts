import { good, type Result } from '../../issue.ts';
import type { Corner, Job } from '../../job/job.ts';
import type { Raster } from '../../picture/raster.ts';
import type { Assets } from '../../pipeline.ts';
import type { Layers } from '../../preview/layers.ts';
import { type Unpacked, unpack } from './colours-picture.ts';
import { lookAt } from './look.ts';

/** A picture of the work as it will look. */
export interface Floor {
  picture: ImageBitmap;
  /** Whether it lies in the photo of the floor; from straight above otherwise. */
  inPhoto: boolean;
  says: string[];
}

export interface FloorWanted {
  /** Where the corners are while they are moved; as the job has them otherwise. */
  corners?: Record<Corner, readonly [number, number]>;
  /** Pixels of the longer side. */
  longSide: number;
}

/** Pixels of the work from above, at most. */
const MOST = 1_500_000;

let work: { of: string; layers: Layers; painted: Raster } | undefined;
let photo: { bytes: Uint8Array; longSide: number; unpacked: Result<Unpacked> } | undefined;

const key = (name: string): string => name.trim().toLowerCase();

function coloursFor(job: Job): Job['colours'] {
  const wished = job.preview?.colourway;
  const way = wished === undefined ? undefined : job.colourways?.find(({ name }) => key(name) === key(wished));
  return way?.colours ?? job.colours;
}

async function bitmap({ width, height, data }: Raster): Promise<ImageBitmap> {
  return createImageBitmap(new ImageData(new Uint8ClampedArray(data), width, height));
}

/** The photo at a size; the last one is kept, as its corners are moved many times. */
async function photoAt(bytes: Uint8Array, name: string, longSide: number): Promise<Result<Unpacked>> {
  if (photo?.bytes !== bytes || photo.longSide !== longSide)
    photo = { bytes, longSide, unpacked: await unpack(bytes, name, longSide) };
  return photo.unpacked;
}

/**
 * The work as it will look, new or worn: laid into the photo that the job names, or from straight above.
 * Issues: those of reading and fitting the job, of the photo and of its corners.
 */
export async function floorOf(
  text: string,
  chosen: number,
  { corners, longSide }: FloorWanted,
  assets: Assets,
): Promise<Result<Floor>> {
  const look = await lookAt(text, chosen, assets);
  if (!look.ok) return look;
  const { drawing, job } = look.value;
  const { bareFloor, over, painted } = await import('../../preview/flat.ts');
  const { smaller } = await import('../../picture/smaller.ts');
  const told = job.preview?.photo;
  const colours = coloursFor(job);
  const { preview: _, name: __, ...rest } = job;
  const of = JSON.stringify([
    rest,
    look.value.layouts[look.value.chosen]?.says,
    look.value.chosen,
    colours,
    job.preview?.looks,
  ]);
  if (work?.of !== of) {
    const { layersHere } = await import('./colours-layers.ts');
    const layers = await layersHere(drawing, job, colours, MOST);
    work = { of, layers, painted: painted(layers, job.preview?.looks) };
  }
  const { layers, painted: coats } = work;
  if (!told) {
    const flat = smaller(over(coats, bareFloor(layers, job)), longSide);
    return good({ picture: await bitmap(flat), inPhoto: false, says: [] });
  }
  const bytes = await assets(told.file);
  const found = bytes.ok ? await photoAt(bytes.value, told.file, longSide) : bytes;
  if (!found.ok)
    return { ok: false, issues: found.issues.map((issue) => ({ ...issue, path: ['preview', 'photo', 'file'] })) };
  const { raster, width, height } = found.value;
  const { inPhoto } = await import('../../preview/in-photo.ts');
  const laid = inPhoto(layers, coats, job, corners ? { ...told, corners } : told, raster, { width, height });
  if (!laid.ok) return laid;
  return good({ picture: await bitmap(laid.value.floor), inPhoto: true, says: laid.value.says });
}
