import * as z from 'zod';
import { FLOORS, PAINTS } from '../job.ts';
import { single } from '../leaves.ts';
import type { Reader } from '../readers.ts';

const OLDEST = 1000;
const LATEST = 2999;

const year: Reader = {
  code: 'job/year',
  example: '1962',
  read(text) {
    const value = /^\s*(\d{4})\s*$/.exec(text)?.[1];
    if (value !== undefined && Number(value) >= OLDEST && Number(value) <= LATEST)
      return { ok: true, value: Number(value) };
    return { ok: false, says: `${text.trim()} is not a year; a year is four digits`, hint: '1962' };
  },
};

/** What the work is painted on, in what, and how old the house is. Three keys, each at the top of the job. */
export const groundShape = {
  'floor is': z
    .enum(FLOORS)
    .meta({
      description:
        'What the paint goes on; the job sheet then says how to prepare it. Default: canvas for a floor cloth; otherwise not known, and the job sheet has a few lines for each.',
      examples: ['bare wood'],
    })
    .optional(),
  'house built': single(
    year,
    'The year the house was built. A house older than 1978 may have lead in its paint. Default: not known, and the job sheet takes it that there may be.',
  ).optional(),
  'paint is': z
    .enum(PAINTS)
    .meta({
      description:
        'What thins the paint: it decides how long to wait. Default: not known, and the job sheet gives both.',
      examples: ['water-based'],
    })
    .optional(),
};
