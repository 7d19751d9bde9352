import { useEffect, useRef } from 'preact/hooks';
import { isDrawn, look } from '../state/answer.ts';
import { paint } from './paint.ts';

/** The plan as it lies on the bench. */
export function Plan() {
  const canvas = useRef<HTMLCanvasElement>(null);
  const seen = look.value;
  useEffect(() => {
    if (canvas.current && seen) paint(canvas.current, seen);
  }, [seen]);
  return (
    <canvas
      ref={canvas}
      role="img"
      aria-label={seen?.layouts[seen.chosen]?.says ?? 'No plan yet'}
      class={isDrawn.value ? '' : 'stale'}
    />
  );
}
