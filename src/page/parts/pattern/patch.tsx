import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Patch } from '../../engine/motifs.ts';
import { look } from '../../state/answer.ts';
import { shownPalette } from '../../state/seen-as.ts';

const SHARPEST = 2;

/** A piece of the floor painted in the colours of the job. Its words stand beside it. */
export function PatchDrawn({ patch, wide }: { patch: Patch; wide: number }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const seen = look.value;
  const palette = seen && shownPalette(seen);
  const colours = seen?.job.colours;
  const high = Math.round((wide * patch.along) / patch.across);
  useLayoutEffect(() => {
    const pen = canvas.current?.getContext('2d');
    if (!pen || !palette || !colours) return;
    const ratio = Math.min(SHARPEST, window.devicePixelRatio || 1);
    const scale = (wide * ratio) / patch.across;
    pen.canvas.width = Math.round(wide * ratio);
    pen.canvas.height = Math.round(high * ratio);
    pen.fillStyle = palette[colours.ground]!;
    pen.fillRect(0, 0, pen.canvas.width, pen.canvas.height);
    for (const { part, d, at } of patch.shapes) {
      const path = new Path2D(d);
      pen.fillStyle = palette[colours[part]]!;
      for (let n = 0; n < at.length; n += 2) {
        pen.setTransform(scale, 0, 0, scale, at[n]! * scale, at[n + 1]! * scale);
        pen.fill(path);
      }
    }
  }, [patch, palette, colours, wide]);
  return <canvas ref={canvas} style={{ width: `${wide}px`, height: `${high}px` }} />;
}
