import { Choice } from '../../fields/field.tsx';
import { isMade, look, made, text } from '../../state/answer.ts';
import { beginOwn, isExample } from '../../state/example.ts';
import { folded } from '../../state/folded.ts';
import { sayBytes } from '../../state/given-read.ts';
import { chosen } from '../../state/job.ts';
import { jobFileName } from '../../state/job-file.ts';
import { useWanted } from '../../state/wanted.ts';
import { zipOf } from '../../state/zip.ts';
import { keep } from '../fit/layouts.tsx';
import { Making, Refused } from '../making.tsx';
import { Part } from '../part.tsx';
import { Picture } from '../picture.tsx';
import './files.css';
import { JobSheet } from './job-sheet.tsx';
import { inOrder, purposeOf } from './names.ts';
import { PassOn } from './pass-on.tsx';
import { save } from './save.ts';

const sizeOf = (content: string | Uint8Array): number =>
  typeof content === 'string' ? new Blob([content]).size : content.length;

/** Everything in a folder of the job's name, and the job file beside it. */
function saveAll(): void {
  const { name, files } = made.value!;
  const all = new Map<string, string | Uint8Array>([...files].map(([file, content]) => [`${name}/${file}`, content]));
  save(`${name}.zip`, zipOf(all.set(jobFileName.value, text.value)));
}

function List() {
  const { files } = made.value!;
  return (
    <ul class="files">
      {inOrder(files.keys()).map((name) => (
        <li key={name}>
          <div>
            <b>{name}</b> <span class="soft">{sayBytes(sizeOf(files.get(name)!))}</span>
            <p class="soft">{purposeOf(name)}</p>
          </div>
          <button type="button" disabled={!isMade.value} onClick={() => save(name, files.get(name)!)}>
            Save<span class="unseen"> {name}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}

function Made() {
  const all = made.value;
  if (!all) return null;
  return (
    <>
      {all.says.length > 0 && (
        <ul class="found">
          {all.says.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
      <div class={isMade.value ? 'shown' : 'shown stale'}>
        <Picture svg={String(all.files.get('plan.svg'))} />
      </div>
      <div class="buttons">
        <button type="button" class="chief" disabled={!isMade.value} onClick={saveAll}>
          Save all {all.files.size} files as one zip
        </button>
        <JobSheet html={String(all.files.get('job-sheet.html'))} />
      </div>
      <List />
    </>
  );
}

/** A job file says what is wished, and the best layout is made from it; another that was chosen has to be kept in it. */
function NotTheFirst() {
  const rank = chosen.value;
  if (rank === 0) return null;
  return (
    <div class="not-first" role="status">
      <p>
        You chose layout {rank + 1}. The job file and the link lead to the best one, number 1, unless the numbers of
        yours are kept in them.
      </p>
      <button type="button" onClick={() => keep(rank)}>
        Keep layout {rank + 1} in the job
      </button>
    </div>
  );
}

/** The job is done: on to another floor, from the head of the card. */
function Another() {
  if (isExample.value) return null;
  return (
    <>
      <h3>Another floor</h3>
      <p class="usual">Its card begins empty, with the same paints. This job stays in the file you saved.</p>
      <button
        type="button"
        onClick={() => {
          folded.value = new Set();
          beginOwn();
        }}
      >
        Begin another
      </button>
    </>
  );
}

function Body() {
  const seen = useWanted();
  return (
    <div ref={seen}>
      <h3>The job itself</h3>
      <p class="usual">
        All you typed, as a file to keep. Open it here again on any day, on any computer: everything else is made from
        it.
      </p>
      <NotTheFirst />
      <div class="buttons">
        <button type="button" disabled={text.value === ''} onClick={() => save(jobFileName.value, text.value)}>
          Save the job file, {jobFileName.value}
        </button>
        <PassOn />
      </div>
      <h3>What is made from it</h3>
      <Choice
        path={['print', 'paper']}
        label="Paper in your printer"
        usual={look.value?.job.print.paper ?? 'letter'}
        options={[
          ['letter', 'letter'],
          ['A4', 'A4'],
          ['legal', 'legal'],
          ['A3', 'A3'],
          ['tabloid', 'tabloid'],
        ]}
      />
      <Making what="the files" />
      <Refused />
      <Made />
      <Another />
    </div>
  );
}

export function Files() {
  const count = made.value?.files.size;
  return (
    <Part part="files" title="Files" line={count ? `${count} files` : ''}>
      <Body />
    </Part>
  );
}
