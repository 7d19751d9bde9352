import type { Issue } from '../../issue.ts';
import { useShown } from '../fields/shown.ts';
import { issues, missing } from '../state/answer.ts';
import { sayPlace } from '../state/did.ts';
import { giveFor, given } from '../state/given.ts';
import { baseName } from '../state/given-read.ts';
import { say } from '../state/job.ts';
import { unkept } from '../state/keep.ts';
import { notice } from '../state/notice.ts';
import { isOver } from './dropped.ts';
import './drop.css';
import { FileButton } from './file-button.tsx';

/** What was opened or refused, until it is read. */
function Told() {
  const told = notice.value;
  if (!told) return null;
  return (
    <div class={told.kind === 'done' ? 'note' : 'note wrong'} role={told.kind === 'done' ? 'status' : 'alert'}>
      <div class="words">
        <p>{told.says}</p>
        {told.issues?.map(({ says, hint, line }) => (
          <p key={says}>
            {line !== undefined && <b>Line {line}: </b>}
            {says}. {hint && <span class="hint">Instead: {hint}</span>}
          </p>
        ))}
      </div>
      <button
        type="button"
        onClick={() => {
          notice.value = undefined;
        }}
      >
        Put this note away
      </button>
    </div>
  );
}

/** Files that the job names, asked for by their names. */
function Missing() {
  const here = new Set(given.value.map(({ path }) => path));
  const asked = missing.value.filter((path) => !here.has(path) && !here.has(baseName(path)));
  return asked.map((path) => (
    <div class="note wrong" key={path} role="status">
      <div class="words">
        <p>
          The job needs the file <b>{baseName(path)}</b>, which is not here yet. Drop it anywhere on the page, or choose
          it. It stays in this browser and goes nowhere else.
        </p>
      </div>
      <FileButton take={([file]) => void giveFor(path, file!)}>Choose {baseName(path)}</FileButton>
    </div>
  ));
}

/** A line of the job file that nothing on the page stands for. */
function UnknownLine({ issue: { path, says, hint, line } }: { issue: Issue }) {
  useShown(path);
  return (
    <div class="note wrong" role="status">
      <div class="words">
        <p>
          The job file{line !== undefined && <b>, line {line}</b>}: {says}.{' '}
          {hint && <span class="hint">Instead: {hint}</span>}
        </p>
      </div>
      <button type="button" onClick={() => say(path, undefined)}>
        Leave {sayPlace(path)} out
      </button>
    </div>
  );
}

const Unknown = () =>
  issues.value
    .filter(({ code }) => code === 'job/unknown-key')
    .map((issue) => <UnknownLine key={issue.path.join('.')} issue={issue} />);

/** What has to be known before the job is gone on with. */
export function Notes() {
  return (
    <div class="notes">
      <Told />
      <Missing />
      <Unknown />
      {unkept.value && (
        <div class="note wrong" role="alert">
          <p>{unkept.value}</p>
        </div>
      )}
      {isOver.value && (
        <div class="let-go" aria-hidden="true">
          <p>Let go to open: a job file, and the drawings, fonts or house file that it names</p>
        </div>
      )}
    </div>
  );
}
