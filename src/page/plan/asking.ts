import { useSignal, useSignalEffect } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { engine } from '../engine/client.ts';
import { isDrawn, isMade, made, text } from '../state/answer.ts';
import { base, chosen, tree } from '../state/job.ts';
import { sheetPicture } from './sheets.ts';
import { cut, cutWrong, sheet, sheetSeen, shown, way } from './state.ts';

/** Before a question that takes long is asked, or something is read out, the job must have stood still for so long, ms. */
const QUIET = 400;
const READ_OUT = 1500;

/** Tells one job from another, with the layout that is chosen of it. */
export const jobNow = (): string => `${chosen.value}\n${text.value}`;

/** Asks for the work as it is cut whenever it is to be seen and the job has changed. */
export function useCutView(): void {
  useSignalEffect(() => {
    const isWanted = way.value === 'cut' || shown.value.bridges;
    const of = jobNow();
    if (!isWanted || !isDrawn.value || cut.value?.of === of) return undefined;
    const ask = { base: base.value, tree: tree.value, chosen: chosen.value };
    const timer = setTimeout(
      async () => {
        try {
          const answer = await engine.cut(ask);
          cutWrong.value = answer.ok ? '' : answer.issues.map(({ says }) => says).join('; ');
          if (answer.ok) cut.value = { of, view: answer.value };
        } catch (error) {
          cutWrong.value = `The cut view could not be drawn: ${error instanceof Error ? error.message.split('\n')[0] : error}`;
        }
      },
      cut.value ? QUIET : 0,
    );
    return () => clearTimeout(timer);
  });
}

/** Makes a picture of the sheet that is looked at. */
export function useSheetPicture(): void {
  useSignalEffect(() => {
    const name = sheet.value;
    const file = isMade.value ? made.value?.files.get(name) : undefined;
    if (typeof file !== 'string') {
      sheetSeen.value = undefined;
      return;
    }
    void sheetPicture(file).then((found) => {
      if (sheet.value === name) sheetSeen.value = found;
    });
  });
}

/** What is read out: the last that was said, once it has stood still for a while. */
export function useQuietly(says: string): string {
  const quiet = useSignal('');
  useEffect(() => {
    const timer = setTimeout(() => {
      quiet.value = says;
    }, READ_OUT);
    return () => clearTimeout(timer);
  }, [says]);
  return quiet.value;
}
