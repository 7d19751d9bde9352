import { useRef } from 'preact/hooks';
import type { Tree } from '../../../job/tree.ts';
import type { System } from '../../../units/index.ts';
import type { JobTree } from '../../engine/ask.ts';
import { endStep, sayAll, tree } from '../../state/job.ts';
import { systemIn } from './begin.ts';

const WRITTEN: Record<System, RegExp> = {
  metric: /\d\s*(?:mm|cm|m)\b/i,
  inch: /\d\s*(?:["'″′]|in\b|ft\b|inch|feet|foot)/i,
};

function* texts(value: Tree | undefined): Generator<string> {
  if (typeof value === 'string') yield value;
  else if (typeof value === 'object' && value !== null) for (const below of Object.values(value)) yield* texts(below);
}

const BARE = /^[\d\s.,/½¼¾⅛⅜⅝⅞]+$/;

/** The system that all measurements are written in, where that is not the one of the tape; nothing where a bare number would change its meaning. */
export function otherSystem(job: JobTree): System | undefined {
  const measured = ['site', 'overall', 'cloth', 'end gap', 'reserve'].flatMap((key) => [...texts(job[key])]);
  if (measured.some((text) => BARE.test(text))) return undefined;
  const own = systemIn(job);
  const other = own === 'inch' ? 'metric' : 'inch';
  const said = measured.filter((text) => WRITTEN.inch.test(text) || WRITTEN.metric.test(text));
  return said.length > 0 && said.every((text) => !WRITTEN[own].test(text)) ? other : undefined;
}

const OFFERED = {
  metric: {
    unit: 'cm',
    words: 'centimetres',
    says: 'You measure in metric, but the plan and the marks come in inches.',
  },
  inch: { unit: 'in', words: 'inches', says: 'You measure in inches, but the plan and the marks come in metric.' },
} as const;

/** Measurements are written in one system, and the marks would come in the other: offers to change that. */
export function OtherSystem() {
  const box = useRef<HTMLDivElement>(null);
  const other = otherSystem(tree.value);
  const take = (unit: string, did: string): void => {
    const units = box.current?.previousElementSibling;
    endStep();
    sayAll([[['units'], unit]], did);
    // The button goes with what it mends.
    requestAnimationFrame(() => units?.querySelector<HTMLElement>('input:checked')?.focus());
  };
  const offered = other && OFFERED[other];
  return (
    <div class={offered ? 'other-system' : ''} role="status" ref={box}>
      {offered && (
        <>
          <p>{offered.says}</p>
          <button type="button" onClick={() => take(offered.unit, `plan and marks in ${offered.words}`)}>
            Plan and marks in {offered.words}
          </button>
        </>
      )}
    </div>
  );
}
