import type { Tree } from '../../../job/tree.ts';
import { Choice, Line, Wrong } from '../../fields/field.tsx';
import { entriesAt, List } from '../../fields/list.tsx';
import { Help } from '../../help/help.tsx';
import { tree } from '../../state/job.ts';
import { type Path, textAt, valueAt } from '../../state/tree.ts';
import { such } from './examples.ts';
import { HowMeasured, type Way, wayNow } from './way.tsx';

const STEPS = ['site', 'steps'];

const WAYS: readonly Way[] = [
  { key: 'alike', words: 'once: all steps are alike', paths: [STEPS, ['site', 'riser'], ['site', 'tread']] },
  {
    key: 'each',
    words: 'step by step',
    paths: [STEPS],
    begins: [[STEPS, [{ riser: { across: null, high: null } }]]],
  },
];

function Riser({ path, stays }: { path: Path; stays?: boolean }) {
  const kept = stays ? { stays } : {};
  return (
    <div class="pair">
      <Line
        {...kept}
        path={[...path, 'riser', 'across']}
        kind="length"
        label="Riser, from side to side"
        example={such('35 7/8"', '91')}
      />
      <Line
        {...kept}
        path={[...path, 'riser', 'high']}
        kind="length"
        label="Riser, high"
        example={such('7 5/8"', '19')}
      />
    </div>
  );
}

function Tread({ path, stays }: { path: Path; stays?: boolean }) {
  const kept = stays ? { stays } : {};
  return (
    <div class="pair">
      <Line
        {...kept}
        path={[...path, 'tread', 'across']}
        kind="length"
        label="Tread, from side to side"
        example={such('36"', '91.5')}
      />
      <Line
        {...kept}
        path={[...path, 'tread', 'deep']}
        kind="length"
        label="Tread, deep"
        example={such('10 1/4"', '26')}
      />
    </div>
  );
}

/** What a flight needs: its risers, its treads where those are painted, alike or one by one, from the bottom up. */
export function Stairs() {
  const steps = valueAt(tree.value, STEPS);
  const now = wayNow('stairs', WAYS, Array.isArray(steps) ? 'each' : typeof steps === 'string' ? 'alike' : undefined);
  const treads = textAt(tree.value, ['stairs', 'painted']) === 'treads';
  const any = (key: string): boolean =>
    entriesAt(STEPS).some((_, n) => valueAt(tree.value, [...STEPS, n, key]) !== undefined);
  const withTreads = treads || any('tread') || valueAt(tree.value, ['site', 'tread']) !== undefined;
  // A new step begins as a copy of the one below it: most differ by little.
  const fresh = (at: number): Tree =>
    entriesAt(STEPS)[at - 1] ?? {
      riser: { across: null, high: null },
      ...(treads ? { tread: { across: null, deep: null } } : {}),
    };
  const margin = ['stairs', 'margin'];
  return (
    <>
      <Choice
        path={['stairs', 'painted']}
        label="Painted are"
        usual="risers"
        options={[
          ['risers', 'the risers'],
          ['treads', 'the treads'],
        ]}
      />
      <HowMeasured name="stairs" label="Measured" now={now} ways={WAYS} />
      {now === 'alike' ? (
        <>
          <Line path={STEPS} kind="count" label="How many steps" example="12" />
          <Riser path={['site']} />
          <Help of="riser" />
          {withTreads && (
            <>
              <Tread path={['site']} />
              <Help of="tread" />
            </>
          )}
        </>
      ) : (
        <section class="chapter" aria-label="The steps, from the bottom up">
          <h3>The steps, from the bottom up</h3>
          <List path={STEPS} name={(n) => `Step ${n + 1}`} fresh={fresh} add="Add the next step up">
            {(path) => (
              <>
                <Riser path={path} stays />
                {withTreads && <Tread path={path} stays />}
              </>
            )}
          </List>
          <Help of="riser" />
          {withTreads && <Help of="tread" />}
        </section>
      )}
      <Choice
        path={['stairs', 'stands']}
        label="The panel stands"
        usual="middle"
        options={[
          ['middle', 'in the middle of the step'],
          ['foot', treads ? 'behind the nosing' : 'on the line of the tread below'],
        ]}
      />
      <div class="pair">
        <Line
          path={[...margin, 'sides']}
          kind="range"
          label="Plain strips at the sides"
          says={such('Left empty, 1/2 to 3 in.', 'Left empty, 12 to 75 mm.')}
          example={such('3/4 to 2', '2 to 5')}
        />
        {treads ? (
          <Line
            path={[...margin, 'treads']}
            kind="range"
            label="Plain strips behind, and before the nosing"
            says={such('Left empty, 1/2 to 3 in.', 'Left empty, 12 to 75 mm.')}
            example={such('1/2 to 3', '1 to 7')}
          />
        ) : (
          <Line
            path={[...margin, 'risers']}
            kind="range"
            label="Plain strips above and below"
            says={such('Left empty, 1/4 to 1 1/2 in.', 'Left empty, 6 to 40 mm.')}
            example={such('3/8 to 1', '1 to 2.5')}
          />
        )}
      </div>
      {treads && (
        <Line
          path={['stairs', 'nosing']}
          kind="length"
          label="Plain strip at the front of each tread"
          says="Paint is slippery where feet land. Keep the front edge plain, or give it a coat with grit."
          example={such('1"', '2.5')}
        />
      )}
      <Wrong path={['stairs']} />
      <Wrong path={['site']} />
    </>
  );
}
