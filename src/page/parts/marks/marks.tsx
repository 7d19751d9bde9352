import { lineWords } from '../../../marks/line-words.ts';
import { listed, upper } from '../../../words.ts';
import type { ToldLine } from '../../engine/told.ts';
import { Line } from '../../fields/field.tsx';
import { onFloor } from '../../floor/open.ts';
import { isDrawn, look, told } from '../../state/answer.ts';
import '../making.css';
import { Part } from '../part.tsx';
import './marks.css';

/** Where the tape is held: once where it is one point, else for each line. */
const heldAt = ({ names, data }: ToldLine): string =>
  new Set(data).size === 1
    ? `Hold the tape at ${data[0]}`
    : upper(names.map((name, n) => `${lineWords(name)}: hold the tape at ${data[n]}`).join('; '));

/** The marks of one guide line, or of lines that carry the same. */
function Marked({ line, open }: { line: ToldLine; open: boolean }) {
  const name = upper(listed(line.names.map(lineWords)));
  return (
    <details open={open}>
      <summary>
        {name}: {line.marks.length} mark{line.marks.length === 1 ? '' : 's'}
      </summary>
      <p class="usual">
        {heldAt(line)}. {line.says}
      </p>
      <table class="told-table readings">
        <caption class="unseen">Marks of {name}</caption>
        <thead>
          <tr>
            <th scope="col">No.</th>
            <th scope="col">Tape</th>
            <th scope="col">For</th>
          </tr>
        </thead>
        <tbody>
          {line.marks.map((mark) => (
            <tr key={mark.number}>
              <td>{mark.number}</td>
              <th scope="row">{mark.tape}</th>
              <td>{mark.for}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {line.parts.length > 0 && (
        <p class="usual">
          In parts, as a check beside the marks: {line.parts.join('; ')}. Where a part is out by more than a mark of the
          tape at either end, pull its marks again.
        </p>
      )}
    </details>
  );
}

function Checks() {
  const checks = told.value?.checks ?? [];
  if (checks.length === 0) return null;
  return (
    <>
      <h3>Is it square?</h3>
      <p class="usual">
        Measure these before any paint. A line that is not square now is not square when it is painted.
      </p>
      <ul class="checks">
        {checks.map(({ says, tape, otherwise }) => (
          <li key={says + tape}>
            <p>
              {upper(says)}: <b>{tape}</b>
            </p>
            <p class="soft">{otherwise}</p>
          </li>
        ))}
      </ul>
    </>
  );
}

function lineOf(): string {
  const lines = told.value?.lines ?? [];
  const count = lines.reduce((sum, line) => sum + line.marks.length * line.names.length, 0);
  const all = lines.reduce((sum, line) => sum + line.names.length, 0);
  return all === 0 ? '' : `${count} marks on ${all} line${all === 1 ? '' : 's'}`;
}

export function Marks() {
  const lines = told.value?.lines ?? [];
  const isInch = look.value?.job.system !== 'metric';
  return (
    <Part part="marks" title="Marks" line={lineOf()} onward="Go on to the paint">
      <Line
        path={['tape']}
        label="Finest mark that you read on your tape"
        kind="length"
        example={isInch ? '1/16 in' : '1 mm'}
        says={isInch ? 'Usual: 1/16 in.' : 'Usual: 1 mm.'}
      />
      {told.value && <p>{told.value.tape}</p>}
      <p>
        Pull every mark of a line from its own start without moving the tape; never add one mark to the next. So no
        error grows.
      </p>
      <button
        type="button"
        disabled={lines.length === 0}
        onClick={() => {
          onFloor.value = true;
        }}
      >
        Take the marks to the floor, one at a time in large figures
      </button>
      {!isDrawn.value && lines.length > 0 && (
        <p class="usual" role="status">
          These marks are from before your last change, which cannot be drawn yet.
        </p>
      )}
      {lines.map((line, n) => (
        <Marked key={line.names.join(' ')} line={line} open={n === 0} />
      ))}
      <Checks />
    </Part>
  );
}
