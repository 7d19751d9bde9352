import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Job } from '../../../job/job.ts';
import { look } from '../../state/answer.ts';
import { paintSmall, windowOf } from './small-work.ts';

const SHARPEST = 2;
/** Pixels of the longer side. */
const LONG_SIDE = 132;

/** The colours by their numbers, for who does not see them. */
const inNumbers = (palette: Job['palette'], colours: Job['colours']): string =>
  [...new Set(Object.values(colours))]
    .flatMap((name) => (palette[name] ? [`${name} ${palette[name]}`] : []))
    .join(', ');

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
  const seen = look.value;
  const window_ = seen && windowOf(seen);
  const scale = window_ ? LONG_SIDE / Math.max(window_.across, window_.along) : 1;
  const [wide, high] = [Math.round((window_?.across ?? 1) * scale), Math.round((window_?.along ?? 1) * scale)];
  useLayoutEffect(() => {
    // The plan itself is painted first.
    const frame = requestAnimationFrame(() => {
      const pen = canvas.current?.getContext('2d');
      if (!pen || !seen || !window_) return;
      const ratio = Math.min(SHARPEST, window.devicePixelRatio || 1);
      pen.canvas.width = Math.round(wide * ratio);
      pen.canvas.height = Math.round(high * ratio);
      paintSmall(pen, seen, window_, (part) => palette[colours[part]] ?? '#888888');
    });
    return () => cancelAnimationFrame(frame);
  }, [seen, palette, colours]);
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
