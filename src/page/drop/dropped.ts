import { signal } from '@preact/signals';
import { takeFiles } from '../state/given.ts';

/** Whether files are being held over the page. */
export const isOver = signal(false);

const hasFiles = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') ?? false;

/** Files may be let go anywhere on the page. */
export function takeDropped(): void {
  addEventListener('dragover', (event) => {
    if (!hasFiles(event)) return;
    event.preventDefault();
    isOver.value = true;
  });
  addEventListener('dragleave', (event) => {
    if (event.relatedTarget === null) isOver.value = false;
  });
  addEventListener('drop', (event) => {
    isOver.value = false;
    if (!hasFiles(event)) return;
    event.preventDefault();
    void takeFiles([...event.dataTransfer!.files]);
  });
}
