import { Choice, Line } from '../../fields/field.tsx';
import { look, made, told } from '../../state/answer.ts';
import { tree } from '../../state/job.ts';
import { textAt } from '../../state/tree.ts';
import { useWanted } from '../../state/wanted.ts';
import { Making } from '../making.tsx';
import { Part } from '../part.tsx';
import { Care } from './care.tsx';
import { OnHand } from './on-hand.tsx';
import './paint.css';
import { Tins } from './tins.tsx';
import { ToBuy } from './to-buy.tsx';

/** The first year in which no lead was to be put into paint for US houses (US EPA, 40 CFR 745.83). */
const LEAD_FREE = 1978;

function HouseBuilt() {
  const year = Number(textAt(tree.value, ['house built']));
  const isNewer = year >= LEAD_FREE;
  return (
    <Line
      path={['house built']}
      label="Year the house was built"
      example="1962"
      says={
        isNewer
          ? 'Newer than 1978; older boards may still have come in since.'
          : 'Before 1978, or not known: take it that old paint holds lead until a test says otherwise. Do not sand, scrape or heat it; ask a certified renovator or your local authority first.'
      }
    />
  );
}

function Ground() {
  return (
    <>
      <Choice
        path={['paint is']}
        label="The paint is"
        usual=""
        options={[
          ['water-based', 'water-based'],
          ['oil', 'oil'],
          ['', 'not chosen yet'],
        ]}
      />
      <Choice
        path={['floor is']}
        label="The floor is"
        usual={look.value?.job.surface === 'floor-cloth' ? 'canvas' : ''}
        options={[
          ['bare wood', 'bare wood'],
          ['painted', 'painted'],
          ['varnished', 'varnished'],
          ['concrete', 'concrete'],
          ['canvas', 'canvas'],
          ['', 'not known'],
        ]}
      />
      <HouseBuilt />
    </>
  );
}

function Coats() {
  return (
    <>
      <div class="two-up">
        <Line path={['paint', 'coats']} label="Coats" kind="count" example="2" says="Usual: 2." />
        <Line
          path={['paint', 'covers']}
          label="One coat covers"
          example="400 sq ft per gallon"
          says="From the label. Without it, a careful low figure for your floor is taken."
        />
      </div>
      <details>
        <summary>Primer, clear coats, and what the label says of time</summary>
        <div class="two-up">
          <Line path={['paint', 'ground', 'coats']} label="Coats of the ground" kind="count" example="2" />
          <Line
            path={['paint', 'primer', 'coats']}
            label="Coats of primer"
            kind="count"
            example="1"
            says="Usual: 1, but none on a floor that is painted or not known."
          />
          <Line
            path={['paint', 'clear coats', 'coats']}
            label="Clear coats"
            kind="count"
            example="2"
            says="Usual: 2."
          />
          <Line
            path={['paint', 'reserve']}
            label="Kept back for touching up"
            example="10 %"
            says="Usual: 10 % of what is used."
          />
          <Line
            path={['paint', 'time', 'recoat']}
            label="Wait before the next coat"
            example="4 hours"
            says="The label always wins. Usual: 16 hours water-based, 24 hours oil."
          />
          <Line
            path={['paint', 'time', 'placement']}
            label="To lay one sheet once and paint through it"
            example="4 min"
            says="Usual: 4 min."
          />
          <Line
            path={['paint', 'time', 'day']}
            label="Hours you work in a day"
            example="6 hours"
            says="Usual: 6 hours."
          />
          <Line
            path={['paint', 'time', 'walk']}
            label="Wait before light feet"
            example="24 hours"
            says="Usual: 24 hours after the last coat."
          />
        </div>
      </details>
    </>
  );
}

function lineOf(): string {
  const paint = made.value?.told?.paint;
  if (!paint) return '';
  const count = paint.rows.filter(([name]) => name !== '').length;
  const days = paint.days.findLast(([day]) => day !== '')?.[0] ?? '0';
  return `${count} paint${count === 1 ? '' : 's'}, ${days} day${days === '1' ? '' : 's'} of work`;
}

function Body() {
  const seen = useWanted();
  return (
    <div ref={seen}>
      <Ground />
      <Coats />
      <OnHand />
      <Tins path={['paint', 'tins']} />
      <h3>What to buy</h3>
      <Making what="the list of paint" />
      <ToBuy />
      {told.value && <Care items={told.value.care} ends={told.value.careEnds} />}
    </div>
  );
}

export function Paint() {
  return (
    <Part part="paint" title="Paint" line={lineOf()} onward="Go on to the files">
      <Body />
    </Part>
  );
}
