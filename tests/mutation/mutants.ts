/** One change to one line of the engine. The line stands in its file once; where it does not, the mutation no longer applies, which is an error of this list. */
export interface Mutant {
  file: string;
  from: string;
  to: string;
  /** Why nothing can tell the difference, where that has been shown. */
  alike?: string;
}

/** Drawn by chance from all lines of `fit`, `marks` and `stencil` by the operators < <= + - * / && || === min max floor ceil some every, constants and dropped conditions; then kept, so that two runs try the same. */
export const MUTANTS: Mutant[] = [
  {
    file: 'src/fit/pose.ts',
    from: "return landing === 'either' ? ways : ways.map((list) => list.filter((way) => way.edge === landing));",
    to: "return landing === 'either' ? ways : ways.map((list) => list.filter((way) => way.edge !== landing));",
  },
  {
    file: 'src/fit/floor/search.ts',
    from: 'a.along.halves - b.along.halves ||',
    to: 'a.along.halves + b.along.halves ||',
  },
  {
    file: 'src/fit/steps.ts',
    from: 'const last = Math.floor(range.to / step + 1e-6);',
    to: 'const last = Math.ceil(range.to / step + 1e-6);',
  },
  {
    file: 'src/fit/fit.ts',
    from: 'if (candidates.length === 0) return why',
    to: 'if (candidates.length === 1) return why',
  },
  {
    file: 'src/fit/ways.ts',
    from: 'lines.mirrors.length > 0 ? among(phase + halves / 4, lines.mirrors) : among(phase + halves / 2, lines.whole),',
    to: 'lines.mirrors.length > 0 ? among(phase + halves * 4, lines.mirrors) : among(phase + halves / 2, lines.whole),',
  },
  {
    file: 'src/fit/search.ts',
    from: 'if (fixed + x.cost + y.cost + along.run.cost + stretchCost(pulled) > limit) break;',
    to: 'if (fixed + x.cost + y.cost - along.run.cost + stretchCost(pulled) > limit) break;',
    alike: 'a branch is left later, and the list of layouts stays the same',
  },
  {
    file: 'src/fit/floor/cut.ts',
    from: 'if (lines < 0 || most > line + unit + ON) return undefined;',
    to: 'if (lines < 0 && most > line + unit + ON) return undefined;',
  },
  {
    file: 'src/fit/nearest.ts',
    from: 'String((up ? Math.ceil : Math.floor)(value * 1000 - (up ? 1e-6 : -1e-6)) / 1000);',
    to: 'String((up ? Math.ceil : Math.floor)(value / 1000 - (up ? 1e-6 : -1e-6)) / 1000);',
  },
  {
    file: 'src/fit/pitches.ts',
    from: 'from: Math.max(axis.pitch.from, (2 * least) / axis.halves.to),',
    to: 'from: Math.min(axis.pitch.from, (2 * least) / axis.halves.to),',
  },
  {
    file: 'src/fit/build.ts',
    from: 'overall: { across: work.across, along: work.along + 2 * along.frame.gap },',
    to: 'overall: { across: work.across, along: work.along + 3 * along.frame.gap },',
  },
  {
    file: 'src/fit/floor/problem.ts',
    from: 'from: Math.max(range.from, from * (1 - 1e-9)),',
    to: 'from: Math.max(range.from, from * (2 - 1e-9)),',
  },
  {
    file: 'src/fit/floor/build.ts',
    from: 'const repeats = { across: across.halves / 2, along: along.halves / 2 };',
    to: 'const repeats = { across: across.halves / 2, along: along.halves / 3 };',
  },
  {
    file: 'src/fit/axis.ts',
    from: 'return isOnTape(pitch / axis.pieces, step) && isOnTape(start - way.phase * pitch, step);',
    to: 'return isOnTape(pitch / axis.pieces, step) || isOnTape(start - way.phase * pitch, step);',
  },
  {
    file: 'src/fit/candidate.ts',
    from: 'return { ...parts, cost: Math.round(cost * 1e9) / 1e9 };',
    to: 'return { ...parts, cost: Math.floor(cost * 1e9) / 1e9 };',
  },
  {
    file: 'src/fit/floor/fit.ts',
    from: 'const layout = buildFloor(candidate, at + 1);',
    to: 'const layout = buildFloor(candidate, at - 1);',
  },
  {
    file: 'src/fit/floor/none.ts',
    from: 'if (pitches.some((pitch) => layingsOf(axis, pitch, problem.tape).length > 0)) return [];',
    to: 'if (pitches.some((pitch) => layingsOf(axis, pitch, problem.tape).length >= 0)) return [];',
  },
  {
    file: 'src/fit/cost.ts',
    from: 'allowed.wish === undefined || width === 0 ? 0 : POINTS.border * offWish(width, allowed.wish);',
    to: 'allowed.wish === undefined || width === 0 ? 1 : POINTS.border * offWish(width, allowed.wish);',
  },
  {
    file: 'src/fit/floor/cuts.ts',
    from: "const { unit } = wall === 'left' || wall === 'right' ? spacing.across : spacing.along;",
    to: "const { unit } = wall === 'left' && wall === 'right' ? spacing.across : spacing.along;",
  },
  {
    file: 'src/marks/along.ts',
    from: 'const fieldBegins = gaps.near + border + reserve.along;',
    to: 'const fieldBegins = gaps.near - border + reserve.along;',
  },
  {
    file: 'src/marks/floor/rays.ts',
    from: 'const WAYS: Record<Wall, Point> = { near: [0, 1], right: [1, 0], far: [0, -1], left: [-1, 0] };',
    to: 'const WAYS: Record<Wall, Point> = { near: [0, 1], right: [1, 0], far: [0, -1], left: [-2, 0] };',
  },
  {
    file: 'src/marks/across.ts',
    from: 'const edge = layout.work.across / 2;',
    to: 'const edge = layout.work.across * 2;',
  },
  {
    file: 'src/marks/drift.ts',
    from: 'metric: { bias: 0.4, spread: 0.8 },',
    to: 'metric: { bias: 1.4, spread: 0.8 },',
  },
  {
    file: 'src/marks/border.ts',
    from: 'const out = side * (at - length / 2);',
    to: 'const out = side * (at + length / 2);',
  },
  {
    file: 'src/marks/floor/lines.ts',
    from: 'if (at < 1e-6 || at > until - 1e-6) return [];',
    to: 'if (at < 1e-6 && at > until - 1e-6) return [];',
  },
  {
    file: 'src/marks/strip.ts',
    from: "if (border > 0) places.push({ at: border, for: 'inner edge of the border' });",
    to: "if (border >= 0) places.push({ at: border, for: 'inner edge of the border' });",
  },
  {
    file: 'src/marks/stairs.ts',
    from: "{ at: across / 2, for: 'the centre line' },",
    to: "{ at: across / 3, for: 'the centre line' },",
  },
  {
    file: 'src/marks/cloth.ts',
    from: 'if (cloth.hem === 0) return cuts;',
    to: 'if (cloth.hem !== 0) return cuts;',
  },
  {
    file: 'src/marks/joints.ts',
    from: 'for (let line = Math.floor(phase * each); ; line++) {',
    to: 'for (let line = Math.ceil(phase * each); ; line++) {',
    alike: 'the line it leaves out lies at or before the beginning, where none is kept',
  },
  {
    file: 'src/marks/tape.ts',
    from: 'const FINE: Record<System, number> = { inch: MM_PER_INCH / 64, metric: 0.05 };',
    to: 'const FINE: Record<System, number> = { inch: MM_PER_INCH / 64, metric: 1.05 };',
  },
  {
    file: 'src/marks/marks.ts',
    from: 'const longest = Math.max(...lines.flatMap((line) => line.marks.map((mark) => mark.true)));',
    to: 'const longest = Math.min(...lines.flatMap((line) => line.marks.map((mark) => mark.true)));',
  },
  {
    file: 'src/marks/square.ts',
    from: ': { across: 4 * lying, along: 3 * lying, slant: 5 * lying };',
    to: ': { across: 4 * lying, along: 3 * lying, slant: 5 / lying };',
  },
  {
    file: 'src/marks/axis.ts',
    from: "if (job.surface === 'rug' && room) {",
    to: "if (job.surface === 'rug' || room) {",
  },
  {
    file: 'src/marks/room.ts',
    from: "if (Math.abs(off(-half) - off(half)) < 1e-6) return 'lies on it';",
    to: "if (Math.abs(off(-half) - off(half)) <= 1e-6) return 'lies on it';",
    alike: 'only a difference of 1e-6 mm to the last bit would show it',
  },
  {
    file: 'src/marks/alternate.ts',
    from: "const begins = alternation.by === 'checker' ? ' begins' : '';",
    to: "const begins = alternation.by !== 'checker' ? ' begins' : '';",
  },
  {
    file: 'src/stencil/cut-order/tour.ts',
    from: 'const place = this.place[stop]! + 1;',
    to: 'const place = this.place[stop]! + 2;',
  },
  {
    file: 'src/stencil/part.ts',
    from: "['right', 0],",
    to: "['right', 1],",
  },
  {
    file: 'src/stencil/passes.ts',
    from: 'a.left < b.right - TOUCH && b.left < a.right - TOUCH && a.top < b.bottom - TOUCH && b.top < a.bottom - TOUCH;',
    to: 'a.left <= b.right - TOUCH && b.left < a.right - TOUCH && a.top < b.bottom - TOUCH && b.top < a.bottom - TOUCH;',
    alike: 'only an overlap of TOUCH to the last bit would show it',
  },
  {
    file: 'src/stencil/shape.ts',
    from: ': [start[0] + t * (side.to[0] - start[0]), start[1] + t * (side.to[1] - start[1])];',
    to: ': [start[0] + t * (side.to[0] - start[0]), start[1] + t * (side.to[1] + start[1])];',
  },
  {
    file: 'src/stencil/bridges/neck.ts',
    from: 'x >= box.left && x <= box.right && y >= box.top && y <= box.bottom && isInside(points, point),',
    to: 'x >= box.left && x < box.right && y >= box.top && y <= box.bottom && isInside(points, point),',
  },
  {
    file: 'src/stencil/on-floor.ts',
    from: '.filter((pass) => pass.length > 0),',
    to: '.filter((pass) => pass.length >= 0),',
  },
  {
    file: 'src/stencil/orbit.ts',
    from: 'const here = ((moved % classes.m) + classes.m) % classes.m;',
    to: 'const here = ((moved % classes.m) - classes.m) % classes.m;',
  },
  {
    file: 'src/stencil/guide-key.ts',
    from: 'const close = commonLines(laid, way, within[low] + KEY / 2, within[high] - KEY / 2);',
    to: 'const close = commonLines(laid, way, within[low] + KEY * 2, within[high] - KEY / 2);',
  },
  {
    file: 'src/stencil/nest/pack.ts',
    from: 'if (best && (score[0] > best.score[0] || (score[0] === best.score[0] && score[1] >= best.score[1]))) continue;',
    to: 'if (best && (score[0] > best.score[0] && (score[0] === best.score[0] && score[1] >= best.score[1]))) continue;',
  },
  {
    file: 'src/stencil/taped.ts',
    from: 'elements: [...drawn, ...(corner && turnsItself ? [corner] : [])],',
    to: 'elements: [...drawn, ...(corner || turnsItself ? [corner] : [])],',
  },
  {
    file: 'src/stencil/meeting/grow.ts',
    from: 'to: [x + radius * cb, y + radius * sb],',
    to: 'to: [x + radius * cb, y + radius / sb],',
  },
  {
    file: 'src/stencil/neighbour-key.ts',
    from: 'if (painted === 0) continue;',
    to: 'if (painted !== 0) continue;',
  },
  {
    file: 'src/stencil/nest/shelves.ts',
    from: 'const wide = size.across >= size.along ? size : turnedSize(size);',
    to: 'const wide = size.across > size.along ? size : turnedSize(size);',
    alike: 'a square turned is the same square',
  },
  {
    file: 'src/stencil/meeting/gap.ts',
    from: 'besides(members, which, gap).filter(({ of }) => members[of]!.colour !== colour),',
    to: 'besides(members, which, gap).filter(({ of }) => members[of]!.colour === colour),',
  },
  {
    file: 'src/stencil/opening.ts',
    from: 'polygon: flatten(piece[0]!, 0.002),',
    to: 'polygon: flatten(piece[1]!, 0.002),',
  },
  {
    file: 'src/stencil/corner.ts',
    from: 'polygon.some(([px, py]) => Math.abs(px - x) < 0.01 && Math.abs(py - y) < 0.01);',
    to: 'polygon.every(([px, py]) => Math.abs(px - x) < 0.01 && Math.abs(py - y) < 0.01);',
  },
  {
    file: 'src/stencil/soundness.ts',
    from: '{ x, y: (box.bottom + outline.bottom) / 2, width: outline.bottom - box.bottom },',
    to: '{ x, y: (box.bottom + outline.bottom) / 3, width: outline.bottom - box.bottom },',
  },
  {
    file: 'src/stencil/cut-order/contain.ts',
    from: 'Math.max(0, a.left - b.right, b.left - a.right, a.top - b.bottom, b.top - a.bottom);',
    to: 'Math.min(0, a.left - b.right, b.left - a.right, a.top - b.bottom, b.top - a.bottom);',
  },
];
