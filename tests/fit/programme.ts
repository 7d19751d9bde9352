import type { FitProblem } from '../../src/fit/problem.ts';
import { axisOf, edgingOf, inches, problemOf } from './support.ts';

/**
 * The fit as an integer programme for HiGHS (npm `highs`), a general-purpose solver. Every cost is linear in logarithms, so the best layout is an exact
 * programme: one binary a choice of border, of counts across and along and of border counts, and the stretch as the difference of two sums of logarithms.
 * The numbers of the programme are written here from the definitions, in sixteenths of an inch, and share nothing with the search.
 */
export interface Case {
  name: string;
  across: number;
  along: number;
  border: [least: number, most: number, wish: number];
  countsAcross: [number, number];
  countsAlong: [number, number];
  ratio: number;
  sawtooth?: number;
}

const READS = [1, 2, 4, 8, 16];
/** 0.1 points shared over the five ways an inch is read. */
const reading = (sixteenths: number): number => {
  const at = READS.findIndex(
    (part) => Math.abs((sixteenths * part) / 16 - Math.round((sixteenths * part) / 16)) < 1e-7,
  );
  return (0.1 * (at < 0 ? 5 : at)) / 5;
};
const whole = (n: number): boolean => Math.abs(n - Math.round(n)) < 1e-7;

export function programme(one: Case): string {
  const [least, most, wish] = one.border;
  const cost: string[] = [];
  const rows: string[] = [];
  const binaries: string[] = [];
  const logs: string[] = [];
  const unlike: string[] = [];
  const term = (value: number, name: string) => `${value < 0 ? '-' : '+'} ${Math.abs(value).toFixed(12)} ${name}`;
  const borders: string[] = [];
  for (let b = least; b <= most; b++) {
    const name = `b${b}`;
    borders.push(name);
    binaries.push(name);
    cost.push(term(10 * Math.abs(Math.log(b / wish)) + reading(b), name));
    const sides: [string, number, number, [number, number], boolean][] = [
      ['x', one.across, 1, one.countsAcross, true],
      ['y', one.along, -1, one.countsAlong, false],
    ];
    for (const [letter, size, sign, counts, fromMiddle] of sides) {
      const field = size - 2 * b;
      const chosen: string[] = [];
      for (let n = counts[0]; n <= counts[1]; n++) {
        for (const half of [false, true]) {
          const pitch = field / n;
          const start = fromMiddle ? field / 2 : 0;
          const exact = whole(pitch) && whole(start - (half ? pitch / 2 : 0));
          const choice = `${letter}${b}_${n}_${half ? 'h' : 'w'}`;
          binaries.push(choice);
          chosen.push(choice);
          cost.push(term(reading(pitch) + (exact ? 0 : 0.3) + (half ? 0.5 : 0), choice));
          logs.push(term(-sign * Math.log(pitch), choice));
        }
      }
      rows.push(`${chosen.join(' + ')} - ${name} = 0`);
      if (one.sawtooth) {
        const length = size - 2 * b;
        const teeth: string[] = [];
        for (let n = 1; n <= length; n++) {
          const pull = length / n / (b * one.sawtooth);
          if (pull < 0.85 || pull > 1.15) continue;
          const choice = `t${letter}${b}_${n}`;
          binaries.push(choice);
          teeth.push(choice);
          cost.push(term(50 * Math.abs(Math.log(pull)), choice));
          unlike.push(term(sign * Math.log(pull), choice));
        }
        if (teeth.length > 0) rows.push(`${teeth.join(' + ')} - ${name} = 0`);
        else rows.push(`${name} = 0`);
      }
    }
  }
  rows.push(`${borders.join(' + ')} = 1`);
  // along − across − ln ratio = over − under, each within ln 1.05 and ln 1/0.95
  rows.push(`${logs.join(' ')} - over + under = ${Math.log(one.ratio).toFixed(12)}`);
  if (unlike.length > 0) rows.push(`${unlike.join(' ')} - more + less = 0`);
  const free = unlike.length > 0 ? ' + 25 more + 25 less' : '';
  return [
    'Minimize',
    ` obj: ${cost.join('\n ')}\n + 100 over + 100 under${free}`,
    'Subject To',
    ...rows.map((row, at) => ` r${at}: ${row.replaceAll(' + ', '\n + ')}`),
    'Bounds',
    ` 0 <= over <= ${Math.log(1.05).toFixed(12)}`,
    ` 0 <= under <= ${(-Math.log(0.95)).toFixed(12)}`,
    'Binary',
    ` ${binaries.join('\n ')}`,
    'End',
  ].join('\n');
}

export const cases: Case[] = [
  {
    name: 'passage 3 ft by 19 ft 7 3/8 in',
    across: 36 * 16,
    along: 235 * 16 + 6,
    border: [40, 56, 48],
    countsAcross: [4, 6],
    countsAlong: [28, 42],
    ratio: 1,
  },
  {
    name: 'rug 5 by 7 ft',
    across: 60 * 16,
    along: 84 * 16,
    border: [56, 80, 64],
    countsAcross: [6, 8],
    countsAlong: [8, 12],
    ratio: 1,
  },
  {
    name: 'odd sixteenths both ways',
    across: 36 * 16 + 3,
    along: 91 * 16 + 5,
    border: [36, 44, 40],
    countsAcross: [4, 7],
    countsAlong: [12, 20],
    ratio: 1,
  },
  {
    name: 'lozenges, root 3',
    across: 30 * 16,
    along: 102 * 16 + 9,
    border: [32, 48, 40],
    countsAcross: [3, 5],
    countsAlong: [6, 11],
    ratio: Math.sqrt(3),
  },
  {
    name: 'squat lozenges',
    across: 48 * 16,
    along: 60 * 16 + 2,
    border: [48, 60, 56],
    countsAcross: [3, 5],
    countsAlong: [6, 12],
    ratio: 0.6,
  },
  {
    name: 'small cloth',
    across: 24 * 16,
    along: 36 * 16,
    border: [16, 32, 24],
    countsAcross: [3, 9],
    countsAlong: [4, 14],
    ratio: 1,
  },
  {
    name: 'sawtooth, joint with the field',
    across: 34 * 16,
    along: 61 * 16 + 4,
    border: [40, 48, 44],
    countsAcross: [4, 6],
    countsAlong: [8, 12],
    ratio: 1,
    sawtooth: 0.8,
  },
  {
    name: 'sawtooth round a runner',
    across: 32 * 16 + 8,
    along: 142 * 16 + 14,
    border: [36, 44, 40],
    countsAcross: [3, 5],
    countsAlong: [16, 26],
    ratio: 1,
    sawtooth: 1.1,
  },
  {
    name: 'sawtooth, odd sixteenths',
    across: 41 * 16 + 7,
    along: 77 * 16 + 11,
    border: [32, 42, 36],
    countsAcross: [5, 7],
    countsAlong: [10, 15],
    ratio: 1,
    sawtooth: 0.7,
  },
  {
    name: 'nearly square room',
    across: 119 * 16 + 4,
    along: 120 * 16,
    border: [64, 96, 80],
    countsAcross: [8, 11],
    countsAlong: [8, 11],
    ratio: 1,
  },
  {
    name: 'long hall',
    across: 40 * 16,
    along: 433 * 16 + 3,
    border: [48, 52, 50],
    countsAcross: [5, 6],
    countsAlong: [55, 75],
    ratio: 1,
  },
  {
    name: 'narrow strip',
    across: 14 * 16 + 2,
    along: 88 * 16 + 7,
    border: [20, 32, 24],
    countsAcross: [1, 3],
    countsAlong: [8, 30],
    ratio: 1,
    sawtooth: 1,
  },
];

const sixteenth = inches(1 / 16);

/** The same case as the search takes it. */
export const problemFor = (one: Case): FitProblem =>
  problemOf({
    across: axisOf({
      datum: 'middle',
      overall: { from: one.across * sixteenth, to: one.across * sixteenth },
      halves: { from: 2 * one.countsAcross[0], to: 2 * one.countsAcross[1] },
    }),
    along: axisOf({
      datum: 'end',
      overall: { from: one.along * sixteenth, to: one.along * sixteenth },
      halves: { from: 2 * one.countsAlong[0], to: 2 * one.countsAlong[1] },
    }),
    border: { from: one.border[0] * sixteenth, to: one.border[1] * sixteenth, wish: one.border[2] * sixteenth },
    edging: edgingOf(one.sawtooth ?? 'plain'),
    ratio: one.ratio,
  });

/** What the solver is asked for: the very best, not one near it. */
export const EXACTLY = { mip_rel_gap: 0, mip_abs_gap: 1e-9 };
