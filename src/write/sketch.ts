import { emptyBox, growBox } from '../geometry/measure.ts';
import type { Box, Point } from '../geometry/path.ts';
import { INK } from './ink.ts';
import { CAPITAL, type Lettering } from './lettering.ts';
import { linesText, rectangleText } from './path.ts';
import { type Attributes, element } from './svg.ts';

export type Anchor = 'start' | 'middle' | 'end';

/** Ink on paper: lines and labels gathered in order, and how far they reach. Lengths in mm. */
export class Sketch {
  readonly box: Box = emptyBox();
  private readonly marks: string[] = [];

  constructor(
    readonly lettering: Lettering,
    /** Size of the ordinary lettering; line widths and spaces are shares of it. */
    readonly size: number,
  ) {}

  get text(): string {
    return this.marks.join('\n');
  }

  /** Puts in an element as it is; `corners` say how far it reaches. */
  add(mark: string, ...corners: Point[]): void {
    for (const [x, y] of corners) growBox(this.box, x, y);
    this.marks.push(mark);
  }

  path(points: Point[], attributes: Attributes = {}): void {
    this.add(element('path', { d: linesText(points), ...attributes }), ...points);
  }

  rectangle(box: Box, attributes: Attributes): void {
    const { left, top, right, bottom } = box;
    this.add(element('path', { d: rectangleText(box), ...attributes }), [left, top], [right, bottom]);
  }

  width(text: string, size = this.size): number {
    return this.lettering.width(text, size);
  }

  /**
   * A label whose capitals are centred on (x, y), or on the line through it when it is turned.
   * Lettering that the face cannot set is refused: see `LabelError`.
   */
  label(text: string, [x, y]: Point, anchor: Anchor, look: { size?: number; turn?: number; fill?: string } = {}): void {
    const { size = this.size, turn = 0, fill } = look;
    const drop = (CAPITAL / 2) * size;
    const place = { x: x - drop * Math.sin(turn), y: y + drop * Math.cos(turn), size, anchor, turn };
    const width = this.width(text, size);
    const from = anchor === 'start' ? 0 : anchor === 'middle' ? -width / 2 : -width;
    const corner = (along: number, off: number): Point => [
      x + along * Math.cos(turn) - off * Math.sin(turn),
      y + along * Math.sin(turn) + off * Math.cos(turn),
    ];
    this.add(
      element('path', { 'data-label': text, fill: fill ?? INK, stroke: 'none', d: this.lettering.path(text, place) }),
      ...[-drop, drop].flatMap((off) => [corner(from, off), corner(from + width, off)]),
    );
  }
}
