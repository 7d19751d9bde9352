import type { Layout } from '../../../fit/layout.ts';
import type { Job, Range } from '../../../job/job.ts';
import type { Tree } from '../../../job/tree.ts';
import type { RoomLayout } from '../../../room-border/layout.ts';
import type { Change, Path, Trial } from './offer.ts';
import { lengths, numbers, rangeTree, reaching, type Scale, writeRange } from './text.ts';

/** What was found with a limit let out: a layout of repeats, or of a border along walls. */
export interface Found {
  layout?: Layout;
  room?: RoomLayout;
}

/** One limit of a job that can be let out: how far it is tried, and what is then written of what was found. */
export interface Limit {
  /** Wider and wider. */
  tries: Change[][];
  /** Just so wide as it needs to be. */
  tight(found: Found): Trial | undefined;
}

type At = (path: Path) => Tree | undefined;

const share = numbers(0.01);
const counts = numbers(0.5);
const percent = (stretch: number): number => Math.round(Math.abs(stretch - 1) * 1000) / 10;

const grown = ({ from, to }: Range, by: number): Range => ({ from: from / by, to: to * by });
const more = ({ from, to }: Range, by: number): Range => ({ from: Math.max(0, from - by), to: to + by });

/** How far outside the range a value lies, as a share of the nearer end. */
function beyond({ from, to }: Range, value: number): number {
  if (value < from) return (from - value) / from;
  return value > to ? (value - to) / Math.max(to, 1e-9) : 0;
}

interface RangeLimit {
  path: Path;
  range: Range;
  scale: Scale;
  tries: Range[];
  /** What the layout has, one or more. */
  has(found: Found): number[] | undefined;
  says(written: string): string;
  /** Points for a change by the whole of its size. */
  weight: number;
  /** Points for being changed at all. */
  base?: number;
}

/** A limit that is one range at one path. */
function ranged(at: At, { path, range, scale, tries, has, says, weight, base = 0 }: RangeLimit): Limit {
  const said = at(path);
  return {
    tries: tries.map((wide): Change[] => [[path, rangeTree(wide, scale, said)]]),
    tight(found) {
      const values = has(found);
      if (!values) return undefined;
      const tight = values.reduce((held, value) => reaching(held, value), { from: range.from, to: range.to });
      const by = base + weight * Math.max(...values.map((value) => beyond(range, value)));
      return { says: says(writeRange(tight, scale)), changes: [[path, rangeTree(tight, scale, said)]], by };
    },
  };
}

/** One change that is tried as it stands. */
const plain = (says: string, changes: Change[], by: number): Limit => ({
  tries: [changes],
  tight: () => ({ says, changes, by }),
});

const WAYS = ['across', 'along'] as const;
const WIDE = { across: 'wide', along: 'long' };

/** How far a repeat may be pulled, said in percent. */
const saysStretch = (subject: string) => (written: string) => {
  const [from, to = from] = written.split(' to ').map(Number) as [number, number?];
  const [less, more] = [from!, to!].map((end) => `${percent(end)} %`);
  if (from === 1) return `Let ${subject} be drawn out by up to ${more}`;
  if (to === 1) return `Let ${subject} be drawn in by up to ${less}`;
  return `Let ${subject} be drawn in by up to ${less} and out by up to ${more}`;
};

/** The border as a branch, so that something can be said below it. */
function borderChange(at: At, key: string, value: Tree): Change[] {
  const said = at(['border']);
  return typeof said === 'string' ? [[['border'], { motif: said, [key]: value }]] : [[['border', key], value]];
}

function fieldLimits(job: Job, at: At): Limit[] {
  const { field } = job;
  const length = lengths(job);
  const limits: Limit[] = [
    ranged(at, {
      path: ['field', 'stretch'],
      range: field.stretch,
      scale: share,
      tries: [1.06, 1.25].map((by) => {
        const { from, to } = grown(field.stretch, by);
        return { from: Math.max(0.5, from), to: Math.min(2, to) };
      }),
      has: ({ layout }) => layout && [layout.stretch],
      says: saysStretch('a repeat'),
      weight: 100,
    }),
  ];
  if (field.landing !== 'either' && job.surface !== 'floor')
    limits.push(plain('Let the pattern end on whole or on half repeats', [[['field', 'landing'], undefined]], 2));
  for (const way of WAYS) {
    const repeats = field.repeats[way];
    if (repeats)
      limits.push(
        ranged(at, {
          path: ['field', 'repeats', way],
          range: repeats,
          scale: counts,
          tries: [1, 4, 40].map((by) => ({ from: Math.max(0.5, repeats.from - by), to: repeats.to + by })),
          has: ({ layout }) => layout && [layout.repeats[way]],
          says: (written) => `Take ${written} repeats ${way}`,
          weight: 8,
          base: 0.5,
        }),
      );
    const pitch = field.pitch[way];
    if (pitch)
      limits.push(
        ranged(at, {
          path: ['field', 'pitch', way],
          range: pitch,
          scale: length,
          tries: [1.1, 1.35, 2].map((by) => grown(pitch, by)),
          has: ({ layout }) => layout && [layout.pitch[way]],
          says: (written) => `Let a repeat be ${written} ${WIDE[way]}`,
          weight: 12,
          base: 0.3,
        }),
      );
  }
  if (field.alternation)
    limits.push(
      plain('Leave out the exchange of colours from repeat to repeat', [[['field', 'alternate'], undefined]], 7),
    );
  const { medallion } = job;
  if (medallion) {
    const now = medallion.repeats.across;
    for (const repeats of [now - 1, now + 1, now - 2, now + 2])
      if (repeats >= 1)
        limits.push(
          plain(
            `Give the medallion the room of ${repeats} × ${repeats} repeats`,
            [[['medallion', 'repeats'], String(repeats)]],
            3 + Math.abs(now - repeats),
          ),
        );
    limits.push(plain('Leave the medallion out', [[['medallion'], undefined]], 9));
  }
  return limits;
}

function borderLimits(job: Job, at: At): Limit[] {
  const { border } = job;
  if (border.motif === 'none') return [];
  const length = lengths(job);
  const limits: Limit[] = [];
  const ranges: RangeLimit[] = [
    {
      path: ['border', 'width'],
      range: border.width,
      scale: length,
      tries: [1.15, 1.6].map((by) => grown(border.width, by)),
      has: ({ layout, room }) => (layout ? [layout.border] : room && [room.width]),
      says: (written) => `Let the border be ${written} wide`,
      weight: 10,
      base: 0.2,
    },
    {
      path: ['border', 'stretch'],
      range: border.stretch,
      scale: share,
      tries: [1.12, 1.4].map((by) => {
        const { from, to } = grown(border.stretch, by);
        return { from: Math.max(0.5, from), to: Math.min(2, to) };
      }),
      has: ({ room }) => room?.runs.map(({ stretch }) => stretch),
      says: saysStretch('the repeats of the border'),
      weight: 40,
    },
  ];
  for (const one of ranges) {
    const key = one.path[1] as string;
    const limit = ranged(at, one);
    const below = (changes: Change[]) => changes.flatMap(([, value]) => borderChange(at, key, value!));
    limits.push({
      tries: limit.tries.map(below),
      tight(found) {
        const tight = limit.tight(found);
        return tight && { ...tight, changes: below(tight.changes) };
      },
    });
    // What a layout does not tell is written as it was tried.
    if (key === 'stretch')
      for (const [n, wide] of one.tries.entries()) {
        const changes = below([[one.path, writeRange(wide, share)]]);
        limits.push({
          tries: [changes],
          tight: ({ room }) => (room ? undefined : { says: one.says(writeRange(wide, share)), changes, by: 3 + 5 * n }),
        });
      }
  }
  if (border.run === 'reverse')
    limits.push(
      plain(
        'Let the border run round instead of turning back at the middle of each side',
        borderChange(at, 'run', 'round'),
        4,
      ),
    );
  if (border.motif !== 'plain-band')
    limits.push(plain('Take a plain band for the border', [...borderChange(at, 'motif', 'plain-band')], 8));
  if (job.inner) limits.push(plain('Leave the inner border out', [[['inner border'], undefined]], 8));
  return limits;
}

function placeLimits(job: Job, at: At): Limit[] {
  const length = lengths(job);
  const inch = job.system === 'inch';
  const little = inch ? 25.4 : 25;
  const limits: Limit[] = [];
  if (job.surface === 'runner' && job.site.run !== undefined)
    limits.push(
      ranged(at, {
        path: ['end gap'],
        range: job.endGap,
        scale: length,
        tries: [little / 2, 6 * little].map((by) => ({ from: job.endGap.from, to: job.endGap.to + by })),
        // Both gaps may differ by a step of the tape.
        has: ({ layout }) => layout && [layout.endGap, Math.max(layout.gaps.near, layout.gaps.far)],
        says: (written) => `Leave ${written} of plain floor at each end`,
        weight: 0,
        base: 1.5,
      }),
    );
  if (job.surface === 'room-border') {
    const { strip } = job.roomBorder!;
    limits.push(
      ranged(at, {
        path: ['reserve'],
        range: strip,
        scale: length,
        tries: [little / 2, 2 * little, 4 * little].map((by) => more(strip, by)),
        has: ({ room }) => room?.runs.map((run) => run.strip),
        says: (written) => `Let the plain strip at the walls be ${written} wide`,
        weight: 4,
      }),
    );
    if (job.roomBorder!.pitch === 'one')
      limits.push(plain('Give each wall a pitch of its own', borderChange(at, 'pitch', 'each wall'), 3));
    if (job.roomBorder!.atDoors === 'stop' && (job.site.doors ?? []).length > 0)
      limits.push(plain('Let the border run on past the doors', borderChange(at, 'at doors', 'run on'), 5));
    return limits;
  }
  if (job.surface === 'floor') {
    for (const by of [0.5, 1, 2, 3])
      limits.push(
        plain(
          `Leave a plain strip of ${length.write(by * little)} at the walls`,
          [[['reserve'], length.write(by * little)]],
          2 + by,
        ),
      );
    return limits;
  }
  const inner = job.inner ? job.inner.width + job.inner.gap : 0;
  limits.push(
    ranged(at, {
      path: ['reserve'],
      range: {
        from: Math.min(job.reserve.across.from, job.reserve.along.from),
        to: Math.max(job.reserve.across.to, job.reserve.along.to),
      },
      scale: length,
      tries: [little / 2, 2 * little].map((by) =>
        more(
          {
            from: Math.min(job.reserve.across.from, job.reserve.along.from),
            to: Math.max(job.reserve.across.to, job.reserve.along.to),
          },
          by,
        ),
      ),
      has: ({ layout }) => layout && [layout.reserve.across - inner, layout.reserve.along - inner],
      says: (written) => `Leave a plain strip of ${written} between field and border`,
      weight: 0,
      base: 2.5,
    }),
  );
  for (const way of WAYS) {
    const size = job.overall[way];
    if (size)
      limits.push(
        ranged(at, {
          path: ['overall', way],
          range: size,
          scale: length,
          tries: [1.01, 1.05, 1.15].map((by) => grown(size, by)),
          has: ({ layout }) => layout && [layout.overall[way]],
          says: (written) => `Let it be ${written} ${WIDE[way]}`,
          weight: 90,
          base: 0.5,
        }),
      );
  }
  if (job.surface === 'stairs' && job.stairs) {
    const { margin, painted } = job.stairs;
    for (const key of ['sides', painted] as const)
      for (const by of [1.5, 3]) {
        const wide = { from: margin[key].from / by, to: margin[key].to * by };
        const written = writeRange(wide, length);
        const where = key === 'sides' ? 'at the sides' : key === 'risers' ? 'above and below' : 'before and behind';
        limits.push(
          plain(`Leave plain strips of ${written} ${where}`, [[['stairs', 'margin', key], written]], 1.5 + by),
        );
      }
  }
  return limits;
}

/** Every single limit that a job sets, to be let out one at a time. */
export const limitsOf = (job: Job, at: At): Limit[] => [
  ...(job.surface === 'room-border' ? [] : fieldLimits(job, at)),
  ...borderLimits(job, at),
  ...placeLimits(job, at),
];

/** Where the border leaves nothing for the field: narrower ones, and none. */
export function narrower(job: Job, at: At): Limit[] {
  const { width } = job.border;
  const length = lengths(job);
  const part = [0.75, 0.5, 0.33].map((by): Limit => {
    const written = writeRange({ from: width.from * by, to: width.to * by }, length);
    return plain(`Let the border be ${written} wide`, borderChange(at, 'width', written), 10 * (1 - by));
  });
  return [...part, plain('Leave the border out', [[['border'], 'none']], 12)];
}
