import { useSignal } from '@preact/signals';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import type { Corner } from '../../../../job/job.ts';
import { CORNERS, type Corners, firstCorners, type Spot, stepOf, within } from './photo.ts';

const NAMES: Record<Corner, string> = {
  'near-left': 'Near left corner',
  'near-right': 'Near right corner',
  'far-right': 'Far right corner',
  'far-left': 'Far left corner',
};

/** The photo with the four corners of the rectangle to be moved, and what was laid into it. */
export function Stage({
  bytes,
  corners,
  laid,
  move,
  rest,
}: {
  bytes: Uint8Array;
  corners: Corners | undefined;
  laid: ImageBitmap | undefined;
  /** While a corner is moved. */
  move(corners: Corners): void;
  /** When it is let go. */
  rest(corners: Corners): void;
}) {
  const image = useRef<HTMLImageElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const size = useSignal<{ width: number; height: number } | undefined>(undefined);
  const held = useSignal<{ name: Corner; off: Spot } | undefined>(undefined);
  useEffect(() => {
    size.value = undefined;
    const address = URL.createObjectURL(new Blob([bytes as BlobPart]));
    image.current!.src = address;
    return () => URL.revokeObjectURL(address);
  }, [bytes]);
  useLayoutEffect(() => {
    const pen = canvas.current?.getContext('2d');
    if (!pen) return;
    pen.canvas.width = laid?.width ?? 1;
    pen.canvas.height = laid?.height ?? 1;
    if (laid) pen.drawImage(laid, 0, 0);
  }, [laid]);
  const now = size.value;
  const at = corners ?? (now && firstCorners(now));
  useEffect(() => {
    if (now && !corners) rest(firstCorners(now));
  }, [now]);
  const spotOf = (event: PointerEvent): Spot => {
    const box = image.current!.getBoundingClientRect();
    return [
      ((event.clientX - box.left) / box.width) * now!.width,
      ((event.clientY - box.top) / box.height) * now!.height,
    ];
  };
  const moved = (name: Corner, to: Spot): Corners => ({ ...at!, [name]: within(to, now!) });
  return (
    <div class="photo">
      <img
        ref={image}
        alt="The floor that you chose to lay the work on."
        onLoad={({ currentTarget: { naturalWidth: width, naturalHeight: height } }) => {
          size.value = { width, height };
        }}
      />
      <canvas ref={canvas} />
      {now && at && (
        <>
          <svg viewBox={`0 0 ${now.width} ${now.height}`} aria-hidden="true">
            <polygon class="under" points={CORNERS.map((name) => at[name].join(',')).join(' ')} />
            <polygon points={CORNERS.map((name) => at[name].join(',')).join(' ')} />
          </svg>
          {CORNERS.map((name) => {
            const [left, top] = at[name];
            return (
              <button
                key={name}
                type="button"
                class="corner"
                style={{ left: `${(100 * left) / now.width}%`, top: `${(100 * top) / now.height}%` }}
                aria-label={`${NAMES[name]}: ${Math.round(left)} from the left, ${Math.round(top)} from the top. Arrow keys move it.`}
                onPointerDown={(event) => {
                  event.currentTarget.setPointerCapture(event.pointerId);
                  event.currentTarget.focus();
                  const [x, y] = spotOf(event);
                  held.value = { name, off: [left - x, top - y] };
                }}
                onPointerMove={(event) => {
                  if (held.value?.name !== name) return;
                  const [x, y] = spotOf(event);
                  move(moved(name, [x + held.value.off[0], y + held.value.off[1]]));
                }}
                onPointerUp={() => {
                  if (held.value?.name === name) rest(at);
                  held.value = undefined;
                }}
                onPointerCancel={() => {
                  held.value = undefined;
                }}
                onKeyDown={(event) => {
                  const step = stepOf(event.key, event.shiftKey);
                  if (!step) return;
                  event.preventDefault();
                  rest(moved(name, [left + step[0], top + step[1]]));
                }}
              >
                <span aria-hidden="true" />
              </button>
            );
          })}
        </>
      )}
    </div>
  );
}
