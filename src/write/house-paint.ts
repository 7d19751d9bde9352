import type { HousePlan } from '../paint/house.ts';
import { sayHouseTins } from '../paint/house-says.ts';
import { nameVolume, writeVolume } from '../units/volume.ts';
import { row } from './marks.ts';

const HEAD = 'paint,kind,colour,for,job,used_ml,needed_ml,on_hand_ml,buy_ml,tins,cost,cost_job_by_job'.split(',');

const price = (value: number | undefined): string => (value === undefined ? '' : value.toFixed(2));

/** A row a paint for all jobs, and under it one for each job that uses it (`for` is `all` or `job`). RFC 4180; volumes to 0.001 ml. */
export function writeHouseTable({ paints, system }: HousePlan): string {
  const rows = paints.flatMap((one) => {
    const what = [one.name, one.kind, one.hex ?? ''];
    const [ml, needed, onHand, buy] = [one.ml, one.needed, one.onHand, one.buy].map((each) => each.toFixed(3));
    const tins = sayHouseTins(one, system);
    return [
      row([...what, 'all', '', ml!, needed!, onHand!, buy!, tins, price(one.bought?.cost), price(one.apart?.cost)]),
      ...one.shares.map((share) =>
        row([...what, 'job', share.job, share.ml.toFixed(3), share.needed.toFixed(3), '', '', '', '', '']),
      ),
    ];
  });
  return [row(HEAD), ...rows].join('');
}

export const HOUSE_HEAD = ['Paint', 'Needed', 'At hand', 'To buy'];

/** The table as people read it: a paint for all jobs, then what each job takes of it. */
export const houseRows = ({ paints, system }: HousePlan): string[][] =>
  paints.flatMap((one) => [
    [
      one.name,
      writeVolume(one.needed, system),
      one.onHand > 0 ? nameVolume(one.onHand) : '',
      sayHouseTins(one, system),
    ],
    ...one.shares.map(({ job, needed }) => [`  ${job}`, writeVolume(needed, system), '', '']),
  ]);
