import * as z from 'zod';
import { PAPERS } from '../job.ts';
import { single } from '../leaves.ts';
import type { Lengths } from './lengths.ts';

const YES_OR_NO = z.enum(['yes', 'no']);

export const printShape = ({ overlap, measured }: Lengths) =>
  z
    .strictObject({
      paper: z
        .enum(PAPERS)
        .meta({
          description: 'The paper in the printer. Default: letter, or A4 in metric jobs.',
          examples: ['letter'],
        })
        .optional(),
      overlap: single(
        overlap('1/2"'),
        'What neighbouring pages share, 1/4 in to 2 in (6 to 50 mm). Default: 1/2 in, or 12 mm in metric jobs.',
      ).optional(),
      sheets: YES_OR_NO.meta({
        description: 'Whether the stencil sheets are printed over pages. Default: yes.',
        examples: ['yes'],
      }).optional(),
      plan: YES_OR_NO.meta({
        description: 'Whether the whole plan is printed over pages. Default: yes where it takes 40 pages or fewer.',
        examples: ['no'],
      }).optional(),
      tiles: z
        .enum(['pdf', 'pdf and svg', 'none'])
        .meta({
          description: 'As one PDF, as a PDF and an SVG for each page, or not at all. Default: pdf.',
          examples: ['pdf and svg'],
        })
        .optional(),
      '10 in measured': single(
        measured('10 1/16"'),
        'For a printer that is off: what the bar of 10 in on the first page measured, 9.5 to 10.5 in. Default: 10 in.',
      ).optional(),
    })
    .meta({
      description: 'Templates printed true to size over pages of paper. Default: see each.',
      examples: ['{ paper: letter, plan: no }'],
    });
