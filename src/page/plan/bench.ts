import type { Point } from '../../geometry/path.ts';
import type { Look } from '../engine/look.ts';
import type { CutView } from '../engine/plan/cut.ts';
import { type Inks, inksOf } from './inks.ts';
import { paintLines, type Shown } from './paint-lines.ts';
import { paintMeasure } from './paint-measure.ts';
import { paintCut, paintWork } from './paint-work.ts';
import { readingOf } from './reading.ts';
import { inPlan, type Onto } from './regions.ts';
import { type Snap, snapTo } from './snap.ts';
import { type Margins, pinched, type Size, toPlan, toScreen, type View, wholeView, within, zoomed } from './view.ts';

/** A sheet as a picture, and how large it is, mm. */
export interface SheetPicture {
  picture: HTMLImageElement;
  across: number;
  along: number;
  /** What is measured from on it, mm from its left upper corner. */
  points: readonly Point[];
}

/** All that the drawing depends on but how it lies. */
export interface Seen {
  look: Look | undefined;
  shown: Shown & { bridges: boolean };
  way: 'painted' | 'cut';
  cut: CutView | undefined;
  sheet: SheetPicture | undefined;
  measure: readonly Point[] | undefined;
  aim: { at: Point; caught: boolean } | undefined;
}

/** Pointers and fingers catch what is nearer than this, pixels. */
const CATCH = { fine: 12, coarse: 22 };
const SHARPEST = 2;

/** Room for dimensions beside the plan where they are shown; less of it on a small screen. */
function marginsFor({ width, height }: Size, numbers: boolean): Margins {
  if (!numbers) return { left: 14, right: 14, top: 14, bottom: 14 };
  const isSmall = Math.min(width, height) < 340;
  return isSmall ? { left: 44, right: 60, top: 44, bottom: 28 } : { left: 52, right: 104, top: 52, bottom: 44 };
}

/** The plan on its two canvases: the work on the lower one, lines on the upper one. Draws with the next frame whatever has changed. */
export class Bench {
  private size: Size = { width: 0, height: 0 };
  private seen: Seen | undefined;
  private whole: View = { scale: 1, x: 0, y: 0 };
  private view: View = this.whole;
  private snap: { of: Look | SheetPicture; find: Snap } | undefined;
  private frame = 0;
  private since = 0;
  private dirty = { work: false, lines: false };

  constructor(
    private readonly work: HTMLCanvasElement,
    private readonly lines: HTMLCanvasElement,
    /** Told when the whole plan comes into sight or goes out of it. */
    private readonly onWhole: (isWhole: boolean) => void,
  ) {}

  get isWhole(): boolean {
    return this.view.scale <= this.whole.scale * 1.001;
  }

  get middle(): Point {
    return [this.size.width / 2, this.size.height / 2];
  }

  private get reach() {
    const { sheet, look } = this.seen ?? {};
    if (sheet) return { left: 0, top: 0, right: sheet.across, bottom: sheet.along };
    return look?.lines.reach;
  }

  resize(): void {
    this.size = { width: this.work.clientWidth, height: this.work.clientHeight };
    this.fit(this.isWhole);
    this.draw(true);
  }

  /** Shows something else; what lies under the glass stays there while it is the same plan. */
  show(seen: Seen): void {
    const before = this.seen;
    this.seen = seen;
    const isSame = before?.sheet === seen.sheet && before?.look !== undefined && seen.look !== undefined;
    const isNear = isSame && nearlyAlike(before.look!.lines.reach, seen.look!.lines.reach);
    if (before?.look !== seen.look) this.since = performance.now();
    this.fit(!isNear || this.isWhole);
    const isOver =
      before?.look === seen.look &&
      before?.way === seen.way &&
      before?.cut === seen.cut &&
      before?.sheet === seen.sheet &&
      before?.shown.bridges === seen.shown.bridges &&
      before?.shown.numbers === seen.shown.numbers;
    this.draw(!isOver);
  }

  /** The colours of the page have changed. */
  repaint(): void {
    this.draw(true);
  }

  private fit(toWhole: boolean): void {
    const { reach } = this;
    if (!reach || this.size.width === 0) return;
    this.whole = wholeView(reach, this.size, marginsFor(this.size, this.seen!.shown.numbers && !this.seen!.sheet));
    this.view = toWhole ? this.whole : within(this.view, this.whole, reach, this.size);
    this.onWhole(this.isWhole);
  }

  /** Moves or zooms, as far as there is a plan to see. Returns whether anything moved. */
  look(change: (view: View) => View): boolean {
    const { reach } = this;
    if (!reach) return false;
    const next = within(change(this.view), this.whole, reach, this.size);
    if (next.scale === this.view.scale && next.x === this.view.x && next.y === this.view.y) return false;
    this.view = next;
    this.onWhole(this.isWhole);
    this.draw(true);
    return true;
  }

  zoom(factor: number, about: Point): boolean {
    return this.look((view) => zoomed(view, factor, about));
  }

  pinch(before: readonly [Point, Point], after: readonly [Point, Point]): void {
    this.look((view) => pinched(view, before, after));
  }

  toWhole(): void {
    this.look(() => this.whole);
  }

  toPlan(at: Point): Point {
    return toPlan(this.view, at);
  }

  toScreen(at: Point): Point {
    return toScreen(this.view, at);
  }

  /** The point of the plan at a place of the screen, caught by the drawing where that is near. */
  aimAt(screen: Point, coarse = false): { at: Point; caught: boolean } {
    const at = this.toPlan(screen);
    const { look, sheet } = this.seen ?? {};
    const of = sheet ?? look;
    if (!of) return { at, caught: false };
    if (this.snap?.of !== of)
      this.snap = {
        of,
        find: 'points' in of ? snapTo([], of.points) : snapTo(of.drawing.regions, of.lines.points),
      };
    const caught = this.snap.find(at, CATCH[coarse ? 'coarse' : 'fine'] / this.view.scale);
    return caught ? { at: caught, caught: true } : { at, caught: false };
  }

  private draw(work: boolean): void {
    this.dirty.lines = true;
    if (work) this.dirty.work = true;
    if (this.frame === 0) this.frame = requestAnimationFrame(() => this.paint());
  }

  private paint(): void {
    this.frame = 0;
    const { seen, size } = this;
    if (!seen || size.width === 0) return;
    const inks = inksOf(this.work);
    if (this.dirty.work) this.paintWork(seen, inks);
    const { look, sheet, measure, aim, shown } = seen;
    const onto = this.clean(this.lines);
    if (look) {
      if (!sheet) paintLines(onto, look, inks, shown);
      if (measure) {
        const ends = [...measure, ...(aim && measure.length < 2 ? [aim.at] : [])];
        const text = ends.length > 1 ? readingOf(ends[0]!, ends[1]!, look.job).length : undefined;
        paintMeasure(
          onto,
          { points: measure, aim: measure.length < 2 ? aim?.at : undefined, caught: aim?.caught ?? false, text },
          inks,
        );
      }
    }
    this.dirty = { work: false, lines: false };
    if (this.since > 0) timed(this.since);
    this.since = 0;
  }

  private paintWork({ look, way, cut, sheet, shown }: Seen, inks: Inks): void {
    const onto = this.clean(this.work);
    if (sheet) {
      inPlan(onto);
      onto.pen.fillStyle = '#ffffff';
      onto.pen.fillRect(0, 0, sheet.across, sheet.along);
      onto.pen.drawImage(sheet.picture, 0, 0, sheet.across, sheet.along);
    } else if (look && way === 'cut' && cut) paintCut(onto, look, inks, cut, shown.bridges);
    else if (look) paintWork(onto, look, shown.bridges && cut ? { cut, ink: inks.oxide } : undefined);
  }

  private clean(canvas: HTMLCanvasElement): Onto {
    const ratio = Math.min(SHARPEST, window.devicePixelRatio || 1);
    const [width, height] = [Math.round(this.size.width * ratio), Math.round(this.size.height * ratio)];
    if (canvas.width !== width || canvas.height !== height) {
      canvas.width = width;
      canvas.height = height;
    }
    const pen = canvas.getContext('2d')!;
    pen.setTransform(1, 0, 0, 1, 0, 0);
    pen.clearRect(0, 0, width, height);
    return { pen, view: this.view, size: this.size, ratio };
  }
}

/** Leaves a measure of how long the plan took, once the browser has made the frame that it is in. */
function timed(since: number): void {
  const { port1, port2 } = new MessageChannel();
  port1.onmessage = () => {
    port1.close();
    performance.clearMeasures('plan');
    performance.measure('plan', { start: since, end: performance.now() });
  };
  port2.postMessage(undefined);
}

type Reach = Look['lines']['reach'];

/** Plans that differ by less than a tenth are the same to the eye. */
function nearlyAlike(a: Reach, b: Reach): boolean {
  const size = Math.max(a.right - a.left, a.bottom - a.top);
  return (['left', 'right', 'top', 'bottom'] as const).every((side) => Math.abs(a[side] - b[side]) < size / 10);
}
