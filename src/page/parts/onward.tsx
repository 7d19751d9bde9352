import { useState } from 'preact/hooks';
import type { Issue } from '../../issue.ts';
import { sayIssue } from '../fields/wrong.tsx';
import { looked } from '../state/answer.ts';
import { fold, goOn, type PartKey } from '../state/folded.ts';
import { lacking } from '../state/lacking.ts';
import { partOf } from '../state/part-of.ts';

/** So many are told; the fields tell the others. */
const TOLD = 3;

const FIELDS = 'input, select, textarea';

/** Where what is lacking is put right: the field that says so, the first offer, or the empty field before the words. */
function placeIn(body: HTMLElement): HTMLElement | null | undefined {
  const field = body.querySelector<HTMLElement>('[aria-invalid="true"]');
  const box = body.querySelector<HTMLElement>('.due:not(.not-done), .wrong');
  if (field || !box) return field ?? body.querySelector<HTMLElement>(FIELDS);
  const isBefore = (one: Node) => (one.compareDocumentPosition(box) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;
  const fields = [...body.querySelectorAll<HTMLElement>('.pair, .field')].filter(isBefore).at(-1);
  const near = [...((fields?.closest('.pair') ?? fields)?.querySelectorAll<HTMLInputElement>(FIELDS) ?? [])];
  return box.querySelector('button') ?? near.find(({ value }) => value === '') ?? near[0];
}

function goToPlace(part: PartKey): void {
  fold(part, false);
  requestAnimationFrame(() => {
    const body = document.getElementById(`body-${part}`);
    if (body) placeIn(body)?.focus();
  });
}

const say = (issue: Issue): string =>
  issue.path[0] === 'surface' ? 'First say what you will paint.' : sayIssue(issue);

/** The button at the end of a part. A part that lacks something does not fold: what it is stands here, and one goes on at the place for it. */
export function Onward({ part, says }: { part: PartKey; says: string }) {
  const [isAsked, ask] = useState(false);
  const lacks = isAsked ? lacking(part) : [];
  const go = async (): Promise<void> => {
    await looked();
    const [first] = lacking(part);
    ask(first !== undefined);
    if (first) goToPlace(partOf(first) ?? part);
    else goOn(part);
  };
  return (
    <>
      <button type="button" class="onward" onClick={() => void go()}>
        {says}
      </button>
      <div role="status" class={lacks.length > 0 ? 'due not-done' : ''}>
        {lacks.length > 0 && <p>Not yet:</p>}
        {lacks.slice(0, TOLD).map((issue) => (
          <p key={issue.says}>{say(issue)}</p>
        ))}
        {lacks.length > TOLD && <p>And {lacks.length - TOLD} more.</p>}
      </div>
    </>
  );
}
