import { computed, effect, signal } from '@preact/signals';
import type { Job } from '../../job/job.ts';
import { engine } from '../engine/client.ts';
import type { Seeing } from '../engine/colours.ts';
import type { Look } from '../engine/look.ts';
import { look } from './answer.ts';

/** How the colours of the plan are seen: as they are, as with a deficiency, or faded. */
export const seenAs = signal<Seeing | 'as it is'>('as it is');

type Palettes = Readonly<Record<Seeing, Job['palette']>>;

/** The palettes of the last plan as they are seen in each way, and what they are made of. */
const palettes = signal<{ of: string; seen: Palettes } | undefined>(undefined);

const stamp = (palette: Job['palette']): string => JSON.stringify(palette);

const ofLook = computed(() => (look.value ? stamp(look.value.job.palette) : ''));

/** Asks for them when the colours have changed, after the plan. */
export function keepSeeing(): () => void {
  return effect(() => {
    const of = ofLook.value;
    if (of === '' || palettes.peek()?.of === of) return;
    void engine
      .seen(look.peek()!.job.palette)
      .then((seen) => {
        palettes.value = { of, seen };
      })
      .catch(() => undefined);
  });
}

/** The colours of a plan by name, seen in one way; as they are while that is not known yet. */
export function paletteSeen({ job }: Look, way: Seeing | 'as it is'): Job['palette'] {
  if (way === 'as it is') return job.palette;
  const known = palettes.value;
  return known && known.of === stamp(job.palette) ? known.seen[way] : job.palette;
}

/** The colours of a plan by name, as they are to be shown now. */
export const shownPalette = (seen: Look): Job['palette'] => paletteSeen(seen, seenAs.value);

let last: { of: Look; palette: Job['palette']; shown: Look } | undefined;

/** The plan with its colours as they are to be shown; the same plan as long as neither changes. */
export function shownLook(seen: Look | undefined): Look | undefined {
  if (!seen) return undefined;
  const palette = shownPalette(seen);
  if (palette === seen.job.palette) return seen;
  if (last?.of !== seen || last.palette !== palette)
    last = { of: seen, palette, shown: { ...seen, job: { ...seen.job, palette } } };
  return last.shown;
}
