import { defined } from '../defined.ts';
import type { Job } from '../job.ts';
import type { Wishes } from '../shape/shape.ts';

/** What the job says of its preview; nothing where it says nothing. */
export function previewOf({ preview }: Wishes): Pick<Job, 'preview'> {
  if (!preview) return {};
  const { colourway, looks, photo } = preview;
  const laid = photo && {
    file: photo.file,
    rectangle: photo.rectangle,
    corners: photo.corners,
    ...defined({ at: photo.at }),
    light: photo.light !== 'no',
  };
  return { preview: defined({ colourway, looks, photo: laid }) };
}
