import { readFileSync } from 'node:fs';
import svgpath from 'svgpath';
import { beforeAll, describe, expect, test } from 'vitest';
import type { PaintPlan } from '../../src/paint/whole.ts';
import { makeFiles } from '../../src/pipeline.ts';
import { changePaint } from './support/paint.ts';
import { paintClaims, refutedPaint } from './support/refuted-paint.ts';
import { change, changeLayout, type Files } from './support/tamper.ts';

/*
 * What is changed here is changed wherever a careful hand would: with an area, all that is reckoned from it, in layout.json and in paint.csv. Volumes are worked out
 * anew by the formula of the README: area over cover for every coat, over what stays in the tool.
 */

const SAMPLES = [
  'back-stairs',
  'morning-room-border',
  'parlour-cloth',
  'reading-room-rug',
  'scullery-floor',
  'sunroom-cloth',
  'threshold-cloth',
] as const;
type Name = (typeof SAMPLES)[number];

const made = new Map<Name, Files>();
beforeAll(async () => {
  for (const name of SAMPLES) {
    const text = `${readFileSync(`samples/${name}.job.yaml`, 'utf8')}\nprint: { tiles: none }\n`;
    const one = await makeFiles(text, `${name}.job.yaml`);
    if (!one.ok) throw new Error(JSON.stringify(one.issues));
    made.set(name, one.value.files);
  }
});

describe.each(SAMPLES)('%s', (name) => {
  test('every claim of its paint holds', () => {
    const claims = paintClaims(made.get(name)!);
    expect(claims.filter(({ holds }) => !holds)).toEqual([]);
    expect(claims.length).toBeGreaterThan(20);
  });
});

type Paint = PaintPlan['paints'][number] & { offered?: { size: number; price: number }[] };

/** All that follows from areas, coats, covers and what is at hand, of every paint. */
function reckonedAgain(plan: PaintPlan): void {
  for (const paint of plan.paints) {
    for (const use of paint.uses)
      use.ml = use.covers.reduce((sum, cover) => sum + use.area / cover, 0) / (1 - use.loss);
    paint.ml = paint.uses.reduce((sum, { ml }) => sum + ml, 0);
    paint.needed = paint.ml * (1 + plan.reserve);
    paint.buy = Math.max(0, paint.needed - paint.onHand);
    const { tins } = paint;
    if (!tins) continue;
    paint.cost = tins.reduce((sum, { price, count }) => sum + price * count, 0);
    paint.surplus = Math.max(0, tins.reduce((sum, { size, count }) => sum + size * count, 0) - paint.buy);
  }
}

/** The row of paint.csv that a paint of layout.json has; the words for its tins are kept. */
function rowOf(paint: Paint, row: string): string {
  const on = (where: string) => paint.uses.find((use) => use.on === where);
  const cells = row.split(',');
  const numbers = [paint.ml, paint.needed, paint.onHand, paint.buy].map((value) => value.toFixed(3));
  const areas = ['ground', 'pattern'].flatMap((where) => [
    (on(where)?.area ?? 0).toFixed(0),
    String(on(where)?.coats ?? 0),
  ]);
  return [paint.name, paint.kind, ...areas, ...numbers, cells[10], paint.cost?.toFixed(2) ?? ''].join(',');
}

/** The paint changed in layout.json, all that follows from it there, and paint.csv to match. */
function inBoth(files: Files, edit: (of: (name: string) => Paint, plan: PaintPlan) => void): Files {
  let plan: PaintPlan | undefined;
  const changed = changeLayout(files, ({ paint }) => {
    plan = paint as PaintPlan;
    edit((name) => plan!.paints.find((one) => one.name === name)!, plan);
    reckonedAgain(plan);
  });
  return new Map(changed).set(
    'paint.csv',
    String(files.get('paint.csv'))
      .split('\r\n')
      .flatMap((row, at) => {
        if (at === 0 || row === '') return [row];
        const paint = plan!.paints.find(({ name }) => name === row.split(',')[0]);
        return paint ? [rowOf(paint, row)] : [];
      })
      .join('\r\n'),
  );
}

/** Some drawings with every shape of one part scaled about its first point, so that its area grows by a share. */
const grown = (files: Files, file: string, part: string, by: number): Files =>
  change(files, file, (svg) =>
    changePaint(svg, (spot) => {
      if (spot.part !== part) return undefined;
      const [x, y] = /^M(-?[\d.]+)[ ,]?(-?[\d.]+)/.exec(spot.d)!.slice(1).map(Number) as [number, number];
      const long = Math.sqrt(1 + by);
      return {
        d: svgpath(spot.d)
          .abs()
          .matrix([long, 0, 0, long, x * (1 - long), y * (1 - long)])
          .round(4)
          .toString(),
      };
    }),
  );

/** One shape of a part left out. */
function oneLess(files: Files, file: string, part: string): Files {
  let done = false;
  return change(files, file, (svg) =>
    changePaint(svg, (spot) => {
      if (done || spot.part !== part) return undefined;
      done = true;
      return { d: '' };
    }),
  );
}

const days = (files: Files, edit: (of: PaintPlan['days']) => void): Files =>
  changeLayout(files, ({ paint }) => edit(paint.days));

test('a change made everywhere with nothing changed is none', () => {
  for (const name of SAMPLES) {
    const files = made.get(name)!;
    const again = inBoth(files, (_, plan) => {
      plan.days.walk += 0;
      Object.assign(plan, { touched: true });
    });
    expect(again.get('paint.csv')).toBe(files.get('paint.csv'));
    expect(refutedPaint(again)).toEqual([]);
  }
});

const DAYS = 'the days have every coat of every paint, in their order';
const PAGE = 'the job sheet has every paint and every day as they are told';
const covers = (name: string) => `${name} covers as much as its paint is reckoned for`;

test.each<[string, Name, (files: Files) => Files, string]>([
  ['petals 0.2 % larger', 'threshold-cloth', (files) => grown(files, 'plan.svg', 'field', 2e-3), covers('moss')],
  [
    'letters 2 % smaller',
    'threshold-cloth',
    (files) => grown(files, 'plan.svg', 'lettering', -0.02),
    covers('thistle'),
  ],
  ['stars 0.2 % smaller', 'back-stairs', (files) => grown(files, 'plan.svg', 'field', -2e-3), covers('denim')],
  ['one star tip not painted', 'scullery-floor', (files) => oneLess(files, 'room.svg', 'field'), covers('slate')],
  ['one tooth not painted', 'morning-room-border', (files) => oneLess(files, 'plan.svg', 'border'), covers('pine')],
  ['one corner not painted', 'morning-room-border', (files) => oneLess(files, 'plan.svg', 'corner'), covers('clay')],
  [
    'an area 0.2 % too small, here and there',
    'parlour-cloth',
    (files) =>
      inBoth(files, (of) => {
        of('moss').uses[0]!.area *= 0.998;
      }),
    covers('moss'),
  ],
  [
    'a ground 0.2 % too large under everything',
    'reading-room-rug',
    (files) =>
      inBoth(files, (_, plan) => {
        for (const { uses } of plan.paints) for (const use of uses) if (use.on === 'ground') use.area *= 1.002;
      }),
    covers('the ground'),
  ],
  [
    'a panel less',
    'back-stairs',
    (files) =>
      inBoth(files, (_, plan) => {
        plan.panels -= 1;
        for (const { uses } of plan.paints) for (const use of uses) use.area *= 7 / 8;
      }),
    'paint is reckoned for every panel',
  ],
  [
    'one coat instead of two',
    'parlour-cloth',
    (files) =>
      inBoth(files, (of) => {
        const [use] = of('ink').uses;
        use!.coats = 1;
        use!.covers.pop();
      }),
    DAYS,
  ],
  [
    'twice as much at hand',
    'parlour-cloth',
    (files) =>
      inBoth(files, (of) => {
        of('moss').onHand *= 2;
      }),
    PAGE,
  ],
  [
    'a little more at hand',
    'parlour-cloth',
    (files) =>
      inBoth(files, (of) => {
        of('moss').onHand += 15;
      }),
    PAGE,
  ],
  [
    'foam that keeps next to nothing',
    'scullery-floor',
    (files) =>
      inBoth(files, (of) => {
        of('slate').uses[0]!.loss = 0.02;
      }),
    'what the tool keeps of slate on the pattern is reckoned with',
  ],
  [
    'dearer tins',
    'parlour-cloth',
    (files) =>
      inBoth(files, (of) => {
        of('bone').tins = [{ size: of('bone').offered![0]!.size, price: of('bone').offered![0]!.price, count: 6 }];
      }),
    'no cheaper tins of bone hold enough',
  ],
  [
    'more tins than need be at one price',
    'parlour-cloth',
    (files) =>
      inBoth(files, (of) => {
        const [half] = of('bone').offered!;
        of('bone').offered!.push({ size: 2 * half!.size, price: 2 * half!.price });
      }),
    'no fewer tins of bone at that cost hold enough',
  ],
  [
    'other tins in the table alone',
    'parlour-cloth',
    (files) => change(files, 'paint.csv', (csv) => csv.replace('2 × 1/2 pint', '3 × 1/2 pint')),
    'the table of paint says the same as the layout',
  ],
  [
    'more to buy in the table alone',
    'scullery-floor',
    (files) => change(files, 'paint.csv', (csv) => csv.replace(/(slate,.*,)[^,]+(,\r\n)/, '$12 gallons$2')),
    'the table of paint says the same as the layout',
  ],
  [
    'more over than there is',
    'parlour-cloth',
    (files) =>
      changeLayout(files, ({ paint }) => {
        paint.paints.find(({ name }: Paint) => name === 'ink').surplus += 5;
      }),
    'what the tins of ink hold over is told',
  ],
  [
    'no clear coats',
    'threshold-cloth',
    (files) =>
      inBoth(files, (_, plan) => {
        plan.paints = plan.paints.filter(({ kind }) => kind !== 'clear');
        plan.days.stints = plan.days.stints.filter(({ what }) => !what.startsWith('clear'));
      }),
    'the job sheet has no other paint and no other day',
  ],
  [
    'a coat on the day of the coat before',
    'scullery-floor',
    (files) =>
      days(files, ({ stints }) => {
        stints[1]!.day = stints[0]!.day;
      }),
    'every coat has its wait and is done within working hours',
  ],
  [
    'everything a day early',
    'reading-room-rug',
    (files) =>
      days(files, (of) => {
        for (const stint of of.stints.slice(2)) stint.day -= 1;
      }),
    'every coat has its wait and is done within working hours',
  ],
  [
    'two coats the wrong way round',
    'parlour-cloth',
    (files) =>
      days(files, ({ stints }) => {
        [stints[1]!.what, stints[0]!.what] = [stints[0]!.what, stints[1]!.what];
      }),
    DAYS,
  ],
  [
    'sheets laid in another colour',
    'scullery-floor',
    (files) =>
      days(files, ({ stints }) => {
        const [one] = stints.filter(({ what }) => what.startsWith('pattern in slate'));
        const [other] = stints.filter(({ what }) => what.startsWith('pattern in madder'));
        one!.sheets! -= 1;
        other!.sheets! += 1;
      }),
    'in every coat sheets are laid as often as the layout has them',
  ],
  [
    'sheets laid in no time',
    'sunroom-cloth',
    (files) =>
      days(files, ({ stints }) => {
        for (const stint of stints) if (stint.sheets) stint.hours = 0.1;
      }),
    'every sheet has its time',
  ],
  [
    'more hours than a day has',
    'sunroom-cloth',
    (files) =>
      days(files, ({ stints, working }) => {
        stints[0]!.hours = working + 0.5;
      }),
    'every coat has its wait and is done within working hours',
  ],
  [
    'furniture on soft paint',
    'reading-room-rug',
    (files) =>
      days(files, (of) => {
        of.furniture = of.walk;
      }),
    'furniture comes back no sooner than a week after the last coat',
  ],
  [
    'a rug on soft paint',
    'reading-room-rug',
    (files) =>
      days(files, (of) => {
        of.rugs = of.furniture;
      }),
    'rugs come back no sooner than a month after the last coat',
  ],
  [
    'walking told a day later than on the job sheet',
    'scullery-floor',
    (files) =>
      days(files, (of) => {
        of.walk += 1;
      }),
    PAGE,
  ],
  [
    'another area on the job sheet',
    'reading-room-rug',
    (files) =>
      change(files, 'job-sheet.html', (page) => page.replace('1.37 m²', '1.47 m²').replace('1.37 m²', '1.47 m²')),
    PAGE,
  ],
  [
    'tape for fewer edges',
    'reading-room-rug',
    (files) =>
      changeLayout(files, ({ paint }) => {
        paint.tape.length *= 0.998;
      }),
    'there is tape for all edges that are masked',
  ],
  [
    'tape for one panel',
    'back-stairs',
    (files) =>
      changeLayout(files, ({ paint }) => {
        paint.tape.length /= 8;
      }),
    'there is tape for all edges that are masked',
  ],
  [
    'less canvas',
    'sunroom-cloth',
    (files) =>
      changeLayout(files, ({ paint }) => {
        paint.canvas.buy -= 100;
      }),
    'the canvas to buy is that of the cloth',
  ],
  [
    'smaller film',
    'threshold-cloth',
    (files) =>
      changeLayout(files, ({ paint }) => {
        paint.films.across /= 2;
      }),
    'as many films are bought as sheets are cut from',
  ],
])('%s (%s) is refuted', (_, name, tampered, claim) => {
  expect(refutedPaint(tampered(made.get(name)!))).toContain(claim);
});
