import { useEffect, useRef } from 'preact/hooks';
import { pictures } from './small.ts';

/** The small true drawing of a layout: all of a list are drawn to one scale. */
export function Drawn({ rank, says }: { rank: number; says: string }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const small = pictures.value[rank];
  useEffect(() => {
    const to = canvas.current;
    if (!to || !small) return;
    to.width = small.picture.width;
    to.height = small.picture.height;
    to.getContext('2d')!.drawImage(small.picture, 0, 0);
  }, [small]);
  // The longest side of the longest layout is as wide as the card.
  const wide = small ? Math.max(2, (100 * small.picture.width) / 720) : 100;
  return (
    <div class="small">
      <canvas ref={canvas} role="img" aria-label={says} style={{ width: `${wide}%` }} />
      {small?.turned && <p class="says">The near end is at the left.</p>}
    </div>
  );
}
