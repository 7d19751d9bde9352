import { describe, expect, test } from 'vitest';
import { readJob } from '../../src/job/read.ts';
import { allMotifs } from '../../src/motif/library.ts';
import { writeJob } from '../../src/page/engine/write-job.ts';
import { asTold, CORNERS, cornersIn, firstCorners, stepOf, within } from '../../src/page/parts/colours/floor/photo.ts';
import { floorToPhoto } from '../../src/preview/corners.ts';

const size = { width: 4000, height: 3000 };

describe('the corners in the photo', () => {
  test('stand round a rectangle on the floor from the first on', () => {
    const corners = firstCorners(size);
    const rectangle = { across: 762, along: 2438 };
    expect(floorToPhoto({ rectangle, corners, file: 'floor.jpg' }, size).ok).toBe(true);
  });

  test('are read by the job as they were told', () => {
    const corners = firstCorners(size);
    const photo = { file: './floor.jpg', rectangle: { across: '30 in', along: '8 ft' }, corners: asTold(corners) };
    const tree = {
      evenfield: '1',
      surface: 'rug',
      overall: { across: '60 in', along: '84 in' },
      field: { motif: 'diamond' },
      preview: { photo },
    };
    expect(cornersIn(tree)).toEqual(corners);
    const job = readJob(writeJob('', tree), 'rug', allMotifs());
    expect(job.ok && job.value.preview?.photo?.corners).toEqual(corners);
    // 1 in is 25.4 mm and 1 ft is 304.8 mm: NIST Special Publication 811, Appendix B.
    expect(job.ok && job.value.preview?.photo?.rectangle).toEqual({ across: 30 * 25.4, along: 2438.4 });
  });

  test('stay in the photo, on whole pixels', () => {
    expect(within([-3.2, 3000.7], size)).toEqual([0, 3000]);
    expect(within([12.4, 7.6], size)).toEqual([12, 8]);
  });

  test('move by one pixel with an arrow, by ten with shift', () => {
    expect(stepOf('ArrowLeft', false)).toEqual([-1, 0]);
    expect(stepOf('ArrowDown', true)).toEqual([0, 10]);
    expect(stepOf('Tab', false)).toBeUndefined();
    expect(stepOf('toString', false)).toBeUndefined();
  });

  test('what the job has half is no set of corners', () => {
    const { 'far-left': _, ...three } = asTold(firstCorners(size));
    expect(cornersIn({ preview: { photo: { corners: three } } })).toBeUndefined();
    expect(CORNERS).toHaveLength(4);
  });
});
