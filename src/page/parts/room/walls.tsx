import type { Tree } from '../../../job/tree.ts';
import { Line, Pick, Picked } from '../../fields/field.tsx';
import { entriesAt, List } from '../../fields/list.tsx';
import { Help } from '../../help/help.tsx';
import { endStep, say, sayAll, tree } from '../../state/job.ts';
import { type Path, textAt, valueAt } from '../../state/tree.ts';
import { such } from './examples.ts';

const WALLS = ['site', 'walls'];
const DOORS = ['site', 'doors'];

/** Four walls to begin with; more are added where the room has a chimney breast or an alcove. */
const FOUR = 4;

const isBare = (wall: Tree | undefined): wall is string | null => typeof wall === 'string' || wall === null;

const lengthPath = (path: Path): Path => (isBare(valueAt(tree.value, path)) ? path : [...path, 'length']);

/** Says something of a wall that may have been written as its length alone. */
function sayOf(path: Path, key: string, value: string | undefined): void {
  const wall = valueAt(tree.value, path);
  if (isBare(wall)) say(path, { length: wall, ...(value === undefined ? {} : { [key]: value }) });
  else say([...path, key], value);
}

const nameOf = (at: number): string => textAt(tree.value, [...WALLS, at, 'name']) || `wall ${at + 1}`;

function beginWalls(): void {
  endStep();
  sayAll([[WALLS, Array.from({ length: FOUR }, () => ({ length: null }))]], 'four walls to measure');
}

/** What a border round a room needs: every wall in turn, and the doors in them. */
export function Walls() {
  const walls = entriesAt(WALLS);
  const fresh = (): Tree => ({ wall: String(Math.max(1, walls.length)), starts: null, ends: null });
  return (
    <>
      <section class="chapter" aria-label="The walls in turn">
        <h3>The walls in turn</h3>
        <p class="plainly">
          Walk round with the wall at your left hand, from the near left corner up the left wall, and write each wall
          down.
        </p>
        <Help of="walls" asks="How do I walk round the room?" />
        {walls.length === 0 && (
          <button type="button" class="aside" onClick={beginWalls}>
            Begin with four walls
          </button>
        )}
        <List path={WALLS} name={(n) => `Wall ${n + 1}`} fresh={() => ({ length: null })} add="Add a wall" ordered>
          {(path, n) => (
            <>
              <div class="pair">
                <Line
                  stays
                  path={lengthPath(path)}
                  kind="length"
                  label="Length, corner to corner"
                  example={such(`13' 1/2"`, '397.5')}
                />
                <Line path={[...path, 'name']} label="Name, if you like" example="window wall" />
              </div>
              <Picked
                path={[...path, 'corner']}
                label={`Corner at the end of ${nameOf(n)}`}
                value={textAt(tree.value, [...path, 'corner']) || 'inside'}
                onPick={(value) => sayOf(path, 'corner', value === 'inside' ? undefined : value)}
                options={[
                  ['inside', 'inside: I turn right'],
                  ['outside', 'outside: I turn left, as round a chimney breast'],
                ]}
              />
            </>
          )}
        </List>
      </section>
      <section class="chapter" aria-label="Doors">
        <h3>Doors</h3>
        <List path={DOORS} name={(n) => `Door ${n + 1}`} fresh={fresh} add="Add a door">
          {(path) => (
            <>
              <Pick
                path={[...path, 'wall']}
                label="In"
                options={walls.map((_, n) => {
                  const name = nameOf(n);
                  return [name === `wall ${n + 1}` ? String(n + 1) : name, name] as const;
                })}
              />
              <div class="pair">
                <Line stays path={[...path, 'starts']} kind="length" label="Begins at" example={such('26"', '66')} />
                <Line stays path={[...path, 'ends']} kind="length" label="Ends at" example={such('60 1/2"', '153.5')} />
              </div>
            </>
          )}
        </List>
        <Help of="wallDoor" />
      </section>
      <Line
        path={['reserve']}
        kind="range"
        label="Plain strip between wall and border"
        example={such('2 to 4', '5 to 10')}
      />
    </>
  );
}
