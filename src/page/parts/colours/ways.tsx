import type { Job } from '../../../job/job.ts';
import type { Part } from '../../../motif/motif.ts';
import { Line, Wrong } from '../../fields/field.tsx';
import { entriesAt } from '../../fields/list.tsx';
import { useStops } from '../../fields/stops.ts';
import { look } from '../../state/answer.ts';
import { endStep, sayAll, tree } from '../../state/job.ts';
import { coloursTold } from './asking.ts';
import { KEYS } from './by-keys.tsx';
import { dropChanges, freeNameFor, keepChanges, makeOwnChanges } from './palette.ts';
import { PART_WORDS } from './part-words.ts';
import { WorkDrawn } from './work-drawn.tsx';

const PATH = ['colourways'];

/** `Ground linen, field slate, border oxblood.` */
export const saysColours = (colours: Job['colours'], parts: readonly Part[]): string =>
  `${parts.map((part, at) => `${at === 0 ? PART_WORDS[part] : PART_WORDS[part].toLowerCase()} ${colours[part]}`).join(', ')}.`;

function does(changes: ReturnType<typeof keepChanges>, did: string): void {
  endStep();
  sayAll(changes, did);
}

/** The same work in other colours, side by side. */
export function Ways() {
  const rows = useStops('li');
  const seen = look.value;
  const told = coloursTold.value;
  if (!seen || !told) return null;
  const { job } = seen;
  const parts = told.parts.map(({ part }) => part);
  const ways = job.colourways ?? [];
  const names = ways.map(({ name }) => name);
  const weak = (name: string): string =>
    told.ways
      .slice(1)
      .find((way) => way.name === name)
      ?.says.join(' ') ?? '';
  return (
    <section class="group" aria-labelledby="colours-ways" aria-describedby={KEYS}>
      <h3 id="colours-ways">Other colours for the same work</h3>
      {entriesAt(PATH).length === 0 && <p class="usual">Keep the present colours, then try others: both stay here.</p>}
      <ul class="ways-hung" ref={rows}>
        <li>
          <WorkDrawn palette={job.palette} colours={job.colours} says={saysColours(job.colours, parts)} />
          <div>
            <p class="called">As the job is made</p>
            <p class="usual">{saysColours(job.colours, parts)}</p>
          </div>
        </li>
        {entriesAt(PATH).map((_, at) => {
          const way = ways[at];
          const called = way?.name ?? `colours ${at + 2}`;
          return (
            <li key={at}>
              {way && <WorkDrawn palette={job.palette} colours={way.colours} says={saysColours(way.colours, parts)} />}
              <div>
                <Line
                  path={[...PATH, at, 'name']}
                  label={`Colours ${at + 2} are called`}
                  example="Winter"
                  stays={true}
                />
                {way && <p class="usual">{saysColours(way.colours, parts)}</p>}
                {weak(called) && <p class="usual">{weak(called)}</p>}
                <div class="acts">
                  <button
                    type="button"
                    disabled={!way}
                    onClick={() =>
                      does(
                        makeOwnChanges(tree.value, job, parts, at, freeNameFor('As it was', names)),
                        `the colours of ${called} taken`,
                      )
                    }
                  >
                    Paint it in {called}
                  </button>
                  <button type="button" onClick={() => does(dropChanges(tree.value, at), `${called} taken out`)}>
                    Take {called} out
                  </button>
                </div>
                <Wrong path={[...PATH, at]} />
              </div>
            </li>
          );
        })}
      </ul>
      <Wrong path={PATH} />
      <button
        type="button"
        onClick={() =>
          does(
            keepChanges(tree.value, parts, { name: freeNameFor('Colours kept', names), colours: job.colours }),
            'the present colours kept',
          )
        }
      >
        Keep the present colours here too
      </button>
    </section>
  );
}
