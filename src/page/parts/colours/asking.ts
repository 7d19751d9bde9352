import { signal, useSignalEffect } from '@preact/signals';
import { engine } from '../../engine/client.ts';
import type { ColoursTold } from '../../engine/colours.ts';
import { isDrawn, text } from '../../state/answer.ts';
import { base, chosen, tree } from '../../state/job.ts';

/** Which parts there are to colour, and how what touches reads; of the last job that could be drawn. */
export const coloursTold = signal<ColoursTold | undefined>(undefined);

/** The plan comes first, ms. */
const REST = 180;

export function useColoursTold(): void {
  useSignalEffect(() => {
    text.value;
    const ask = { base: base.value, tree: tree.value, chosen: chosen.value };
    if (!isDrawn.value) return undefined;
    const timer = setTimeout(
      async () => {
        const told = await engine.colours(ask).catch(() => undefined);
        if (told?.ok && tree.peek() === ask.tree) coloursTold.value = told.value;
      },
      coloursTold.peek() ? REST : 0,
    );
    return () => clearTimeout(timer);
  });
}
