import { effect, useComputed } from '@preact/signals';
import { useEffect, useId, useRef } from 'preact/hooks';
import type { Point } from '../../geometry/path.ts';
import { isDue, sayIssue } from '../fields/wrong.tsx';
import { SeenNote } from '../parts/colours/seen-note.tsx';
import { isDrawn, issues, look } from '../state/answer.ts';
import { tree } from '../state/job.ts';
import { shownLook } from '../state/seen-as.ts';
import { textAt } from '../state/tree.ts';
import { jobNow, useCutView, useQuietly, useSheetPicture } from './asking.ts';
import { Bench } from './bench.ts';
import { listen } from './gestures.ts';
import { doingOf, STEP } from './keys.ts';
import './plan.css';
import { aim, cut, isOpen, isWhole, measuring, sheetSeen, shown, way } from './state.ts';
import { setPoint, TapeReading, tapeWords } from './tape.tsx';
import { WhatIsSeen } from './under.tsx';

/** How far an arrow key moves the cross, pixels; with Shift, one. */
const CROSS = 12;
/** How far an arrow key moves the plan, pixels. */
const SHIFT = 60;

/** What lies there before there is a plan. */
function NoPlan() {
  const hasKind = textAt(tree.value, ['surface']) !== '';
  const isOnlyDue = issues.value.every(isDue);
  const says = isOnlyDue
    ? 'Your plan comes here, drawn to scale, once the measurements are in:'
    : 'Your plan comes here, drawn to scale, once this is put right on the card:';
  return (
    <div class="no-plan">
      <p>{hasKind ? says : 'Your plan comes here.'}</p>
      {hasKind ? (
        <ul>
          {issues.value.map((issue) => (
            <li key={issue.says}>
              <p>{sayIssue(issue)}</p>
            </li>
          ))}
        </ul>
      ) : (
        <p>First say on the card what you will paint, then what you measured. The plan is drawn anew as you type.</p>
      )}
    </div>
  );
}

/** The plan as it lies on the bench. */
export function Plan() {
  const id = useId();
  const stage = useRef<HTMLDivElement>(null);
  const work = useRef<HTMLCanvasElement>(null);
  const lines = useRef<HTMLCanvasElement>(null);
  const bench = useRef<Bench>(undefined);
  /** Where the cross of the keys is, pixels of the stage. */
  const cross = useRef<Point>(undefined);
  useSheetPicture();
  useCutView();

  useEffect(() => {
    const made = new Bench(work.current!, lines.current!, (whole) => {
      isWhole.value = whole;
    });
    bench.current = made;
    const watch = new ResizeObserver(() => made.resize());
    watch.observe(stage.current!);
    const dark = matchMedia('(prefers-color-scheme: dark)');
    const repaint = () => made.repaint();
    dark.addEventListener('change', repaint);
    void document.fonts?.ready.then(repaint);
    const aimAt = (at: Point | undefined, coarse = false): void => {
      if (!measuring.value) return;
      cross.current = at;
      aim.value = at && measuring.value.length < 2 ? made.aimAt(at, coarse) : undefined;
    };
    const stop = listen(stage.current!, {
      holdsFinger: () => !made.isWhole,
      move: (dx, dy) => made.look((view) => ({ ...view, x: view.x + dx, y: view.y + dy })),
      zoom: (factor, about) => made.zoom(factor, about),
      pinch: (before, after) => made.pinch(before, after),
      tap: (at, coarse) => {
        if (measuring.value) setPoint(made.aimAt(at, coarse).at);
      },
      tapTwice: (at) => {
        if (measuring.value) setPoint(made.aimAt(at).at);
        else made.zoom(STEP * STEP, at);
      },
      hover: aimAt,
    });
    return () => {
      stop();
      watch.disconnect();
      dark.removeEventListener('change', repaint);
    };
  }, []);

  const seen = useComputed(() => ({
    look: shownLook(look.value),
    shown: shown.value,
    way: way.value,
    // What was cut of another job does not lie on this one.
    cut: cut.value?.of === jobNow() ? cut.value.view : undefined,
    sheet: sheetSeen.value,
    measure: measuring.value,
    aim: aim.value,
  }));
  // At once, not with the next frame as a signal effect of a component would: the plan is painted in that frame already.
  useEffect(() => effect(() => bench.current?.show(seen.value)), []);
  useEffect(() => {
    // Points that were set belong to what they were set on.
    if (measuring.value) measuring.value = [];
    aim.value = undefined;
  }, [look.value, sheetSeen.value]);

  const startMeasuring = (): void => {
    measuring.value = measuring.value ? undefined : [];
    aim.value = undefined;
    cross.current = undefined;
    if (measuring.value) stage.current?.focus({ preventScroll: true });
  };

  const moveCross = (across: number, along: number, fine: boolean): void => {
    const made = bench.current!;
    // Two points are set already: the tape is laid anew.
    if (measuring.value?.length === 2) measuring.value = [];
    const [x, y] = cross.current ?? made.middle;
    const step = fine ? 1 : CROSS;
    let to: Point = cross.current ? [x + across * step, y + along * step] : [x, y];
    const { clientWidth: width, clientHeight: height } = stage.current!;
    const inside: Point = [Math.min(width, Math.max(0, to[0])), Math.min(height, Math.max(0, to[1]))];
    // At the edge the plan comes to meet the cross.
    const by: Point = [inside[0] - to[0], inside[1] - to[1]];
    if (by[0] !== 0 || by[1] !== 0) made.look((view) => ({ ...view, x: view.x + by[0], y: view.y + by[1] }));
    to = inside;
    cross.current = to;
    aim.value = made.aimAt(to);
  };

  const onKeyDown = (event: KeyboardEvent): void => {
    const doing = doingOf(event);
    const made = bench.current;
    if (!doing || !made) return;
    if ((doing.does === 'set' || doing.does === 'stop') && !measuring.value) return;
    event.preventDefault();
    switch (doing.does) {
      case 'zoom':
        made.zoom(doing.factor, cross.current ?? made.middle);
        break;
      case 'whole':
        made.toWhole();
        break;
      case 'go':
        if (measuring.value) moveCross(doing.across, doing.along, doing.fine);
        else made.look((view) => ({ ...view, x: view.x - doing.across * SHIFT, y: view.y - doing.along * SHIFT }));
        break;
      case 'set':
        if (!cross.current) moveCross(0, 0, true);
        setPoint(aim.value?.at ?? made.aimAt(cross.current!).at);
        break;
      case 'stop':
        startMeasuring();
    }
  };

  const change = (by: () => void): void => {
    by();
    // The button that was pressed may have nothing more to do.
    if (bench.current?.isWhole) stage.current?.focus({ preventScroll: true });
  };

  const seenNow = look.value;
  const tape = tapeWords();
  const readOut = useQuietly(tape || (seenNow ? `Plan redrawn. ${seenNow.layouts[seenNow.chosen]?.says}` : ''));
  return (
    <div class={`plan${isWhole.value ? '' : ' close'}`}>
      <div class="sheet">
        <div
          ref={stage}
          class={`stage${isDrawn.value ? '' : ' stale'}${measuring.value ? ' measured' : ''}`}
          // biome-ignore lint/a11y/noNoninteractiveTabindex: moved and measured by keys of its own
          tabIndex={0}
          role="application"
          aria-label="The plan, moved by keys"
          aria-describedby={`${id}-how`}
          onKeyDown={onKeyDown}
        >
          <div role="img" aria-label={seenNow?.lines.says ?? 'No plan yet.'}>
            <canvas ref={work} />
            <canvas ref={lines} />
          </div>
          {!seenNow && <NoPlan />}
        </div>
        <TapeReading />
      </div>
      <div class="under">
        <SeenNote />
        <div class="moves">
          <button type="button" disabled={!seenNow} onClick={() => bench.current?.zoom(STEP, bench.current.middle)}>
            Closer
          </button>
          <button
            type="button"
            disabled={isWhole.value}
            onClick={() => change(() => bench.current?.zoom(1 / STEP, bench.current.middle))}
          >
            Further
          </button>
          <button type="button" disabled={isWhole.value} onClick={() => change(() => bench.current?.toWhole())}>
            Whole floor
          </button>
          <button
            type="button"
            disabled={!seenNow}
            aria-pressed={measuring.value !== undefined}
            onClick={startMeasuring}
          >
            Measure
          </button>
          <button
            type="button"
            class="more"
            aria-expanded={isOpen.value}
            aria-controls={`${id}-seen`}
            onClick={() => {
              isOpen.value = !isOpen.value;
            }}
          >
            What is drawn
          </button>
        </div>
        <div id={`${id}-seen`} class="seen" hidden={!isOpen.value}>
          <WhatIsSeen />
          <p class="how" id={`${id}-how`}>
            Turn the wheel, spread two fingers or press twice on a place to come closer there. One finger scrolls the
            page while the whole floor is seen, and moves the plan closer up. Keys: + and − closer and further, arrows
            move, 0 the whole floor.
          </p>
        </div>
        <p class="unseen" role="status">
          {readOut}
        </p>
      </div>
    </div>
  );
}
