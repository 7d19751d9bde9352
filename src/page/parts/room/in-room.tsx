import { Line, Pick, Picked, Wrong } from '../../fields/field.tsx';
import { List } from '../../fields/list.tsx';
import { Help } from '../../help/help.tsx';
import { endStep, say, tree } from '../../state/job.ts';
import { textAt, valueAt } from '../../state/tree.ts';
import { such } from './examples.ts';
import { CORNERS, WALLS } from './words.ts';

const OPENINGS = ['site', 'openings'];
const OBSTACLES = ['site', 'obstacles'];
const AXIS = ['site', 'axis'];

/** Doors and other openings of a room of four walls. */
export function Openings({ needed = false }: { needed?: boolean }) {
  return (
    <section class="chapter" aria-label="Openings">
      <h3>Openings</h3>
      <p class="plainly">
        {needed ? 'One in the near wall and one in the far wall, at least.' : 'Doors, if the plan shall show them.'}{' '}
        Each by the two outer edges of its casing, from a corner.
      </p>
      <List
        path={OPENINGS}
        name={(n) => `Opening ${n + 1}`}
        fresh={(n) => ({ wall: needed && n === 1 ? 'far' : 'near', starts: null, ends: null })}
        add="Add an opening"
      >
        {(path) => {
          const wall = textAt(tree.value, [...path, 'wall']);
          const upright = wall === 'left' || wall === 'right';
          return (
            <>
              <div class="pair">
                <Pick path={[...path, 'wall']} label="In" options={WALLS} />
                <Pick
                  path={[...path, 'from']}
                  label="Measured from its"
                  usual={upright ? 'near' : 'left'}
                  options={
                    upright
                      ? [
                          ['near', 'near end'],
                          ['far', 'far end'],
                        ]
                      : [
                          ['left', 'left end'],
                          ['right', 'right end'],
                        ]
                  }
                />
              </div>
              <div class="pair">
                <Line
                  stays
                  path={[...path, 'starts']}
                  kind="length"
                  label="Begins at"
                  example={such('14 1/2"', '37')}
                />
                <Line stays path={[...path, 'ends']} kind="length" label="Ends at" example={such('46 3/4"', '118.5')} />
              </div>
            </>
          );
        }}
      </List>
      <Help of="opening" />
    </section>
  );
}

/** What the work stays clear of. */
export function Obstacles() {
  return (
    <section class="chapter" aria-label="What stands in the way">
      <h3>What stands in the way</h3>
      <p class="plainly">A hearth, a post, a stair opening: the work stays clear of it.</p>
      <List
        path={OBSTACLES}
        name={(n) => textAt(tree.value, [...OBSTACLES, n, 'name']) || `Thing ${n + 1}`}
        fresh={() => ({ name: 'hearth', corner: 'far-left', across: null, along: null })}
        add="Add something"
      >
        {(path) => {
          const outline = valueAt(tree.value, [...path, 'outline']);
          return (
            <>
              <div class="pair">
                <Line path={[...path, 'name']} label="What it is" example="hearth" />
                <Pick path={[...path, 'corner']} label="Measured from" usual="near-left" options={CORNERS} />
              </div>
              {outline === undefined ? (
                <div class="pair">
                  <Line
                    stays
                    path={[...path, 'across']}
                    kind="range"
                    label="Along the near or far wall, from where to where"
                    example={such('34 to 82', '86 to 208')}
                  />
                  <Line
                    stays
                    path={[...path, 'along']}
                    kind="range"
                    label="Along the side wall, from where to where"
                    example={such('0 to 15 1/2', '0 to 39.5')}
                  />
                </div>
              ) : (
                <Corners path={[...path, 'outline']} />
              )}
            </>
          );
        }}
      </List>
      <Help of="obstacle" />
    </section>
  );
}

/** An outline by its corners in turn. */
function Corners({ path }: { path: (string | number)[] }) {
  return (
    <List path={path} name={(n) => `Corner ${n + 1}`} fresh={() => ({ across: null, along: null })} add="Add a corner">
      {(one) => (
        <div class="pair">
          <Line stays path={[...one, 'across']} kind="length" label="Along the near or far wall" />
          <Line stays path={[...one, 'along']} kind="length" label="Along the side wall" />
        </div>
      )}
    </List>
  );
}

const axisNow = (): string => {
  const axis = valueAt(tree.value, AXIS);
  if (typeof axis === 'string') return axis;
  for (const key of ['parallel to', 'square to']) {
    const wall = textAt(axis, [key]);
    if (wall) return `${key} ${wall}`;
  }
  if (valueAt(axis, ['along boards', 'points']) !== undefined) return 'points';
  return valueAt(axis, ['along boards']) === undefined ? '' : 'boards';
};

/** What the work is laid along. */
export function Axis({ usual }: { usual: string }) {
  const now = axisNow();
  const point = () => ({ across: null, along: null });
  const pick = (value: string): void => {
    endStep();
    const [, key, wall] = /^(parallel to|square to) (.+)$/.exec(value) ?? [];
    if (value === 'usual') say(AXIS, undefined);
    else if (key) say(AXIS, { [key]: wall! });
    else if (value === 'boards') say(AXIS, { 'along boards': { wall: 'left', turn: '0' } });
    else if (value === 'points') say(AXIS, { 'along boards': { corner: 'near-left', points: [point(), point()] } });
    else say(AXIS, value);
  };
  const boards = [...AXIS, 'along boards'];
  return (
    <div class="chapter">
      <Picked
        path={AXIS}
        label="Laid"
        value={now || 'usual'}
        onPick={pick}
        options={[
          ['usual', usual],
          ['opening to opening', 'from opening to opening'],
          ...WALLS.map(([wall, words]) => [`parallel to ${wall}`, `parallel to ${words}`] as const),
          ...WALLS.map(([wall, words]) => [`square to ${wall}`, `square to the threshold in ${words}`] as const),
          ['boards', 'with the boards, by their turn from a wall'],
          ['points', 'with the boards, by two places on a joint'],
        ]}
      />
      {now === 'boards' && (
        <div class="pair">
          <Pick path={[...boards, 'wall']} label="The boards are told from" options={WALLS} />
          <Line
            path={[...boards, 'turn']}
            kind="count"
            label="They turn from it to the right by so many degrees"
            example="0.5"
          />
        </div>
      )}
      {now === 'points' && (
        <>
          <Pick path={[...boards, 'corner']} label="Both places are measured from" options={CORNERS} />
          {[0, 1].map((n) => (
            <div class="pair" key={n}>
              <Line
                stays
                path={[...boards, 'points', n, 'across']}
                kind="length"
                label={`${n === 0 ? 'First' : 'Second'} place, along the near or far wall`}
                example={such('24', '61')}
              />
              <Line
                stays
                path={[...boards, 'points', n, 'along']}
                kind="length"
                label={`${n === 0 ? 'First' : 'Second'} place, along the side wall`}
                example={such(n === 0 ? '12' : '96', n === 0 ? '30' : '244')}
              />
            </div>
          ))}
          <Help of="boards" />
        </>
      )}
    </div>
  );
}

const PLACE = ['site', 'place'];

/** Where a rug lies in a room of four walls. */
export function Place() {
  const place = valueAt(tree.value, PLACE);
  const now =
    valueAt(place, ['under table']) !== undefined
      ? 'table'
      : valueAt(place, ['on wall']) !== undefined
        ? 'wall'
        : 'middle';
  const pick = (value: string): void => {
    endStep();
    if (value === 'middle') say(PLACE, undefined);
    else if (value === 'wall') say(PLACE, { 'on wall': 'left', off: such('12"', '30') });
    else say(PLACE, { 'under table': { corner: 'near-left', across: null, along: null } });
  };
  const table = [...PLACE, 'under table'];
  return (
    <div class="chapter">
      <Picked
        path={PLACE}
        label="Where it lies"
        value={now}
        onPick={pick}
        options={[
          ['middle', 'in the middle of what the room leaves'],
          ['wall', 'against a wall, on its middle'],
          ['table', 'under a table'],
        ]}
      />
      {now === 'wall' && (
        <>
          <div class="pair">
            <Pick path={[...PLACE, 'on wall']} label="Which wall" options={WALLS} />
            <Line path={[...PLACE, 'off']} kind="length" label="So far off it" example={such('12"', '30')} />
          </div>
          <Help of="offWall" />
        </>
      )}
      {now === 'table' && (
        <>
          <Pick path={[...table, 'corner']} label="The table is measured from" options={CORNERS} usual="near-left" />
          <div class="pair">
            <Line
              stays
              path={[...table, 'across']}
              kind="range"
              label="Along the near or far wall, from where to where"
              example={such('40 to 76', '100 to 190')}
            />
            <Line
              stays
              path={[...table, 'along']}
              kind="range"
              label="Along the side wall, from where to where"
              example={such('48 to 108', '120 to 270')}
            />
          </div>
          <Line
            path={[...table, 'chairs']}
            kind="length"
            label="A chair that is pulled out stands so far behind the edge"
            says={such('Without it, 24 in. 0 for no chairs.', 'Without it, 60 cm. 0 for no chairs.')}
            example={such('24"', '60')}
          />
          <Help of="table" />
          <Wrong path={table} />
        </>
      )}
    </div>
  );
}
