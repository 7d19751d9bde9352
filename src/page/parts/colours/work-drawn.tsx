import { useSignal } from '@preact/signals';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Job } from '../../../job/job.ts';
import { paintWork } from '../../plan/paint-work.ts';
import { look } from '../../state/answer.ts';
import { windowOf } from './window-of.ts';

const SHARPEST = 2;
/** Pixels of the longer side. */
const LONG_SIDE = 132;
/** A drawing that is there already is drawn anew when typing rests, so that the plan comes first. Milliseconds. */
const REST = 150;
/** Colours that a palette does not have yet. */
const UNKNOWN = '#888888';

/** The colours by their numbers, for who does not see them. */
const inNumbers = (palette: Job['palette'], colours: Job['colours']): string =>
  [...new Set(Object.values(colours))]
    .flatMap((name) => (palette[name] ? [`${name} ${palette[name]}`] : []))
    .join(', ');

/** The palette with every colour that is asked of it. */
const filled = (palette: Job['palette'], colours: Job['colours']): Job['palette'] => ({
  ...Object.fromEntries(Object.values(colours).map((name) => [name, UNKNOWN])),
  ...palette,
});

/** The work in other colours, small. `says` tells what is to be seen, where it stands in no words beside it. */
export function WorkDrawn({
  palette,
  colours,
  says,
}: {
  palette: Job['palette'];
  colours: Job['colours'];
  says: string;
}) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const inSight = useSignal(false);
  const isThere = useRef(false);
  const seen = look.value;
  const window_ = seen && windowOf(seen);
  const scale = window_ ? LONG_SIDE / Math.max(window_.across, window_.along) : 1;
  const [wide, high] = [Math.round((window_?.across ?? 1) * scale), Math.round((window_?.along ?? 1) * scale)];
  useLayoutEffect(() => {
    const watch = new IntersectionObserver(([entry]) => {
      inSight.value = entry!.isIntersecting;
    });
    watch.observe(canvas.current!);
    return () => watch.disconnect();
  }, []);
  useLayoutEffect(() => {
    if (!inSight.value) return undefined;
    const timer = setTimeout(
      () => {
        const pen = canvas.current?.getContext('2d');
        if (!pen || !seen || !window_) return;
        const ratio = Math.min(SHARPEST, window.devicePixelRatio || 1);
        pen.canvas.width = Math.round(wide * ratio);
        pen.canvas.height = Math.round(high * ratio);
        const { left, top } = window_;
        paintWork(
          { pen, ratio, view: { scale, x: -left * scale, y: -top * scale }, size: { width: wide, height: high } },
          { ...seen, job: { ...seen.job, palette: filled(palette, colours), colours } },
        );
        isThere.current = true;
      },
      isThere.current ? REST : 0,
    );
    return () => clearTimeout(timer);
  }, [seen, palette, colours, inSight.value]);
  return (
    <span
      class="hung"
      {...(says === ''
        ? { 'aria-hidden': 'true' as const }
        : {
            role: 'img' as const,
            'aria-label': `${says}${window_?.isPart ? ' Shown: the near end.' : ''} ${inNumbers(palette, colours)}`,
          })}
    >
      <canvas ref={canvas} style={{ width: `${wide}px`, height: `${high}px` }} />
    </span>
  );
}
