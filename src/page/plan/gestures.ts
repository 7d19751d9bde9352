import type { Point } from '../../geometry/path.ts';

/** What hands do on the plan, told in pixels of the stage. */
export interface Gestures {
  /** Whether one finger moves the plan; otherwise it is left to the page, which scrolls. */
  holdsFinger(): boolean;
  move(dx: number, dy: number): void;
  zoom(factor: number, about: Point): boolean;
  pinch(before: readonly [Point, Point], after: readonly [Point, Point]): void;
  /** Pressed and let go without moving. `coarse`: by a finger. */
  tap(at: Point, coarse: boolean): void;
  tapTwice(at: Point): void;
  /** A pointer that hovers. */
  hover(at: Point | undefined): void;
}

/** Further than this is a drag, pixels; two taps within this time are one double tap, ms. */
const STILL = 8;
const TWICE = 350;
/** A notch of the wheel, pixels that browsers report for it, makes so many times as large. */
const NOTCH = 100;
const PER_NOTCH = 1.25;
/** Pixels to a line where a browser counts the wheel in lines. */
const LINE = 16;

/** Listens to pointers, fingers and wheel on the stage. Returns what ends that. */
export function listen(stage: HTMLElement, to: Gestures): () => void {
  const down = new Map<number, { at: Point; from: Point }>();
  let moves = false;
  let last: { time: number; at: Point } | undefined;

  const at = ({ clientX, clientY }: { clientX: number; clientY: number }): Point => {
    const { left, top } = stage.getBoundingClientRect();
    return [clientX - left, clientY - top];
  };

  const onDown = (event: PointerEvent): void => {
    if (event.pointerType === 'mouse' && event.button !== 0) return;
    const point = at(event);
    down.set(event.pointerId, { at: point, from: point });
    if (down.size === 1) moves = false;
    if (event.pointerType !== 'touch' || to.holdsFinger() || down.size > 1) stage.setPointerCapture(event.pointerId);
  };

  const onMove = (event: PointerEvent): void => {
    const held = down.get(event.pointerId);
    const point = at(event);
    if (!held) {
      if (event.pointerType !== 'touch') to.hover(point);
      return;
    }
    const before = held.at;
    if (Math.hypot(point[0] - held.from[0], point[1] - held.from[1]) > STILL) moves = true;
    held.at = point;
    if (down.size === 2) {
      moves = true;
      const [other] = [...down].filter(([id]) => id !== event.pointerId).map(([, one]) => one.at);
      to.pinch([before, other!], [point, other!]);
    } else if (down.size === 1 && moves && (event.pointerType !== 'touch' || to.holdsFinger()))
      to.move(point[0] - before[0], point[1] - before[1]);
  };

  const onUp = (event: PointerEvent): void => {
    const held = down.get(event.pointerId);
    down.delete(event.pointerId);
    if (!held || moves || down.size > 0) return;
    const { timeStamp: time } = event;
    const isTwice =
      last && time - last.time < TWICE && Math.hypot(held.at[0] - last.at[0], held.at[1] - last.at[1]) < 3 * STILL;
    last = isTwice ? undefined : { time, at: held.at };
    if (isTwice) to.tapTwice(held.at);
    else to.tap(held.at, event.pointerType === 'touch');
  };

  const onCancel = ({ pointerId }: PointerEvent): void => {
    down.delete(pointerId);
  };
  const onLeave = (): void => to.hover(undefined);

  const onTouch = (event: TouchEvent): void => {
    if (event.cancelable && (event.touches.length > 1 || to.holdsFinger())) event.preventDefault();
  };

  const onWheel = (event: WheelEvent): void => {
    const pixels = event.deltaY * (event.deltaMode === 1 ? LINE : 1);
    // At the whole floor the wheel scrolls the page on.
    if (to.zoom(PER_NOTCH ** (-pixels / NOTCH), at(event))) event.preventDefault();
  };

  stage.addEventListener('pointerdown', onDown);
  stage.addEventListener('pointermove', onMove);
  stage.addEventListener('pointerup', onUp);
  stage.addEventListener('pointercancel', onCancel);
  stage.addEventListener('pointerleave', onLeave);
  stage.addEventListener('touchmove', onTouch, { passive: false });
  stage.addEventListener('wheel', onWheel, { passive: false });
  return () => {
    stage.removeEventListener('pointerdown', onDown);
    stage.removeEventListener('pointermove', onMove);
    stage.removeEventListener('pointerup', onUp);
    stage.removeEventListener('pointercancel', onCancel);
    stage.removeEventListener('pointerleave', onLeave);
    stage.removeEventListener('touchmove', onTouch);
    stage.removeEventListener('wheel', onWheel);
  };
}
