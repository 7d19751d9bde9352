import { describe, expect, test } from 'vitest';
import { good, type Result } from '../../src/issue.ts';
import { houseIn } from '../../src/job/house.ts';
import type { Job } from '../../src/job/job.ts';
import { readJob } from '../../src/job/read.ts';
import { allMotifs } from '../../src/motif/library.ts';
import { fitAny } from '../../src/pipeline.ts';

const HOUSE = [
  'title: Mill Lane',
  "palette: { chalk: '#efe9dc', slate: '#3b4a57', madder: '#9b4636' }",
  'colours: { ground: chalk, field: slate, alternate: madder, border: slate, corner: madder }',
  'field: { motif: eight-point-star, alternate: checker }',
  'border: { motif: sawtooth, corner: quarter-fan }',
  'lettering: { font: letters/house.ttf }',
].join('\n');

const CLOTH = [
  'evenfield: 1',
  'house: ../mill-lane.yaml',
  'surface: floor-cloth',
  'overall: { across: 900 mm, along: 1200 mm }',
];

const read = (job: readonly string[], house = HOUSE): Result<Job> =>
  readJob(job.join('\n'), 'hall.job.yaml', allMotifs(), { file: '../mill-lane.yaml', text: house });

function whole(result: Result<Job>): Job {
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.value;
}

describe('a house that jobs share', () => {
  test('is found by its path', () => {
    expect(houseIn(CLOTH.join('\n'))).toBe('../mill-lane.yaml');
    expect(houseIn('evenfield: 1')).toBeUndefined();
    expect(houseIn('house: ""')).toBeUndefined();
  });

  test('says what the job does not', () => {
    const job = whole(read(CLOTH));
    expect(job.field.motif).toBe('eight-point-star');
    expect(job.field.alternation).toEqual({ by: 'checker' });
    expect([job.border.motif, job.border.corner.motif]).toEqual(['sawtooth', 'quarter-fan']);
    expect(job.palette).toEqual({ chalk: '#efe9dc', slate: '#3b4a57', madder: '#9b4636' });
    expect(job.colours.field).toBe('slate');
    expect(job.lettering).toBeUndefined();
  });

  test('gives way to the job, key by key; a motif of the job comes without what goes with that of the house', () => {
    const job = whole(
      read([
        ...CLOTH,
        "palette: { fern: '#4c6b43' }",
        'colours: { field: fern }',
        'field: { motif: diamond }',
        'border: { width: 60 mm }',
      ]),
    );
    expect(job.palette).toEqual({ chalk: '#efe9dc', slate: '#3b4a57', madder: '#9b4636', fern: '#4c6b43' });
    expect([job.colours.ground, job.colours.field]).toEqual(['chalk', 'fern']);
    expect([job.field.motif, job.field.alternation]).toEqual(['diamond', undefined]);
    expect([job.border.motif, job.border.width.from]).toEqual(['sawtooth', 60]);
    expect(whole(read([...CLOTH, 'border: none'])).border.motif).toBe('none');
  });

  test('has its drawings and fonts beside itself', () => {
    const lettered = [
      ...CLOTH,
      'lettering: [{ text: MILL, cap height: 40 mm }, { text: LANE, place: near, font: own.ttf }]',
    ];
    expect(whole(read(lettered)).lettering?.map(({ font }) => font)).toEqual(['../letters/house.ttf', 'own.ttf']);
    const drawn = whole(read(CLOTH, 'field: { motif: ./leaf.svg }'));
    expect(drawn.field.motif).toBe('.././leaf.svg');
  });

  test('leaves out what a surface has no use for', () => {
    const walls = [
      'evenfield: 1',
      'house: ../mill-lane.yaml',
      'surface: room-border',
      'site: { walls: [4 m, 3 m, 4 m, 3 m] }',
    ];
    expect(whole(read(walls)).border.motif).toBe('sawtooth');
    const stairs = [
      'evenfield: 1',
      'house: h.yaml',
      'surface: stairs',
      'site: { steps: 3, riser: { across: 90 cm, high: 18 cm } }',
    ];
    expect(whole(read(stairs)).border.motif).toBe('none');
    const floor = ['evenfield: 1', 'house: h.yaml', 'surface: floor', 'site: { room: { across: 3 m, along: 4 m } }'];
    expect(whole(read(floor)).border.motif).toBe('none');
  });

  test.each([
    ['a length', 'border: { width: 60 mm }', 'house/key', /border\.width.*motif, corner, turn, run/],
    ['a key of the job', 'surface: rug', 'house/key', /surface.*palette, colours, field, border, lettering/],
    ['another house', 'house: more.yaml', 'house/key', /house/],
    ['a mistyped motif', 'field: { motif: dimond }', 'job/motif', /mill-lane\.yaml.*dimond/],
    ['broken YAML', 'palette: { chalk', '', /mill-lane\.yaml, line 1/],
    [
      'a mistyped key of the paint',
      'paint: { coverss: 400 sq ft per gallon }',
      'job/unknown-key',
      /mill-lane\.yaml.*coverss/,
    ],
    ['a volume that is none', 'paint: { on hand: { chalk: 1 quark } }', 'job/volume', /line 1.*1 quark.*quart/],
    ['a value in the place of keys', 'paint: red', 'house/key', /paint.*lines of their own/],
    ['a colour at hand that no palette has', 'paint: { on hand: { mauve: 1 pint } }', 'job/colour-unknown', /mauve/],
    ['a mistyped colour', "palette: { chalk: '#efe9d' }", '', /mill-lane\.yaml.*#efe9d/],
  ])('with %s is refused, told as of the house at the key of the job', (_, house, code, says) => {
    const result = read([...CLOTH, ...(house.startsWith('field') ? [] : ['field: { motif: diamond }'])], house);
    expect(result.ok).toBe(false);
    if (result.ok) return;
    const [issue] = result.issues;
    if (code !== '') expect(issue!.code).toBe(code);
    expect(issue!.path).toEqual(['house']);
    expect(issue!.says).toMatch(says);
    expect(issue!.line).toBe(2);
  });

  describe('and its paint', () => {
    // A U.S. quart is 57.75 cubic inches and a pint 28.875 (NIST Handbook 44, Appendix C); the inch is 25.4 mm.
    const [quart, pint] = [57.75 * 2.54 ** 3, 28.875 * 2.54 ** 3];
    const PAINT = [
      HOUSE,
      'paint:',
      '  covers: 400 sq ft per gallon',
      '  coats: 3',
      '  on hand: { chalk: 1 quart, slate: 1 pint, clear coats: 1 quart }',
      '  tins: [{ size: 1 quart, price: 24 }]',
      '  colours: { slate: { coats: 1, tool: brush } }',
      '  time: { recoat: 4 hours, walk: 24 hours }',
    ].join('\n');

    test('is that of the job, which remembers what it shares', () => {
      const { paint, house } = whole(read(CLOTH, PAINT));
      expect([paint?.coats, paint?.tins?.[0]?.price, paint?.colours.slate]).toEqual([
        3,
        24,
        { coats: 1, tool: 'brush' },
      ]);
      expect(paint?.onHand.chalk).toBeCloseTo(quart, 6);
      expect(paint?.onHand.slate).toBeCloseTo(pint, 6);
      expect(paint?.onHand.clear).toBeCloseTo(quart, 6);
      expect(house).toEqual({ title: 'Mill Lane', onHand: paint!.onHand, shared: ['chalk', 'slate', 'clear'] });
      expect(whole(read(CLOTH, 'field: { motif: diamond }')).house).toMatchObject({ title: 'Mill lane', onHand: {} });
    });

    test('gives way to the job key by key: one tin of its own leaves the others, tins are another list', () => {
      const { paint, house } = whole(
        read(
          [
            ...CLOTH,
            'paint: { on hand: { slate: 1 quart }, tins: [{ size: 1 pint, price: 9 }], colours: { slate: { coats: 2 } }, time: { recoat: 6 hours } }',
          ],
          PAINT,
        ),
      );
      expect(paint?.onHand.chalk).toBeCloseTo(quart, 6);
      expect(paint?.onHand.slate).toBeCloseTo(quart, 6);
      expect(house?.onHand.slate).toBeCloseTo(pint, 6);
      expect(house?.shared).toEqual(['chalk', 'clear']);
      expect(paint?.tins).toHaveLength(1);
      expect(paint?.tins?.[0]?.price).toBe(9);
      expect(paint?.colours.slate).toEqual({ coats: 2, tool: 'brush' });
      expect(paint?.time).toEqual({ recoat: 6, walk: 24 });
      expect(paint?.coats).toBe(3);
    });

    test('covers as the solids and the film of the job have it, not as the label in the house', () => {
      const { paint } = whole(read([...CLOTH, 'paint: { solids: 50 %, film: 25 µm }'], PAINT));
      // Printed SI spreading tables: 50 % of solids at 25 µm cover 20 m² a litre.
      expect(paint?.covers).toBeCloseTo(20_000, 6);
    });
  });

  test('is read by its path through the door for files, or the reason is told', async () => {
    const text = CLOTH.join('\n');
    const fitted = await fitAny(text, 'hall.job.yaml', 1, async (path) =>
      good(new TextEncoder().encode(path === '../mill-lane.yaml' ? HOUSE : '')),
    );
    expect(fitted.ok && fitted.value.kind === 'rectangle' && fitted.value.value.job.field.motif).toBe(
      'eight-point-star',
    );
    const without = await fitAny(text, 'hall.job.yaml', 1);
    expect(without.ok).toBe(false);
    if (!without.ok) expect(without.issues[0]!.path).toEqual(['house']);
  });
});
