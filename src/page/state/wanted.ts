import { effect, signal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { isDrawn, isMade, isTried, look, makeAll, making, text } from './answer.ts';
import { chosen, tree } from './job.ts';

/** How many parts that show finished files are in view. */
const inView = signal(0);
/** The job has to be left alone so long before all is made again, ms. */
const STILL = 1000;

/** Makes the files while a part that shows them is in view: at once the first time, and after that whenever the job was left alone for a while. */
export function makeWhenWanted(): void {
  let soon: ReturnType<typeof setTimeout> | undefined;
  let tried = '';
  effect(() => {
    clearTimeout(soon);
    const isWanted = inView.value > 0 && isDrawn.value && !isMade.value && !isTried.value && !making.value;
    // Read whatever else, so that every change begins the wait anew.
    const job = `${chosen.value}\n${text.value}\n${JSON.stringify(tree.value)}`;
    look.value;
    if (!isWanted || tried === job) return;
    soon = setTimeout(
      () => {
        tried = job;
        void makeAll();
      },
      tried === '' ? 0 : STILL,
    );
  });
}

/** Says, by the element that it is given to, that finished files are to be seen there. */
export function useWanted() {
  const element = useRef<HTMLDivElement>(null);
  useEffect(() => {
    let isSeen = false;
    const see = (now: boolean): void => {
      if (now === isSeen) return;
      isSeen = now;
      inView.value += now ? 1 : -1;
    };
    const watch = new IntersectionObserver((entries) => see(entries.at(-1)!.isIntersecting));
    watch.observe(element.current!);
    return () => {
      watch.disconnect();
      see(false);
    };
  }, []);
  return element;
}
