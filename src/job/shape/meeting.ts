import { shown } from '../../units/index.ts';
import type { Job } from '../job.ts';
import { refuseWith, typed } from '../leaves.ts';
import type { Lengths } from './lengths.ts';

type Meeting = Job['stencil']['meeting'];

const WAYS = /^(overlap|gap)\b\s*(?:of\b|:)?\s*(.*)$/i;

/** `edge to edge`, or an overlap or a gap and how wide it is. */
export const meetingShape = (lengths: Lengths) =>
  typed
    .transform((given, context): Meeting => {
      const text = String(given).trim().replace(/\s+/g, ' ');
      if (/^edge[ -]to[ -]edge$/i.test(text)) return { way: 'edge to edge', by: 0 };
      const [, word, length] = WAYS.exec(text) ?? [];
      if (word === undefined)
        return refuseWith(
          context,
          'job/colours-meet',
          {
            ok: false,
            says: `${shown(text)} does not say how colours meet; they meet edge to edge, or with an overlap or a gap and its width`,
            hint: 'overlap 1 mm',
          },
          given,
        );
      const way = word.toLowerCase() === 'gap' ? 'gap' : 'overlap';
      const reader = lengths.hair('1 mm');
      if (!length)
        return refuseWith(
          context,
          'job/colours-meet',
          {
            ok: false,
            says: `${shown(text)} does not say how wide the ${way} is; up to 3 mm (about 1/8 in) is allowed`,
            hint: `${way} 1 mm`,
          },
          given,
        );
      const read = reader.read(length);
      if (!read.ok) return refuseWith(context, reader.code, { ...read, hint: `${way} ${read.hint}` }, given);
      return { way, by: read.value };
    })
    .meta({
      description:
        'Where two colours touch: edge to edge; or an overlap, the colour painted first reaching under the other; or a gap in which the ground shows. Up to 3 mm. Default: edge to edge.',
      examples: ['overlap 1 mm', 'gap 1/16"'],
    });
