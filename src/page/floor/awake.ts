import { signal } from '@preact/signals';

/** Whether the screen stays on: `on`, not for now, refused by the browser, or a thing this browser does not do. */
export const awake = signal<'on' | 'waiting' | 'refused' | 'never'>('waiting');

/** What is said of it. */
export const AWAKE = {
  on: 'The screen stays on.',
  waiting: 'The screen is being kept on.',
  refused:
    'The browser does not keep the screen on just now, perhaps to save the battery. Your place is kept if it goes dark.',
  never:
    'This browser cannot keep the screen on. Set a longer time in the phone’s own display settings; your place is kept if it goes dark.',
};

/** Keeps the screen on, and again each time the page comes back into view. Gives what ends that. */
export function stayAwake(): () => void {
  const lock = navigator.wakeLock as WakeLock | undefined;
  if (!lock) {
    awake.value = 'never';
    return () => undefined;
  }
  let held: WakeLockSentinel | undefined;
  let ended = false;
  const take = async (): Promise<void> => {
    if (document.visibilityState !== 'visible' || (held && !held.released)) return;
    try {
      held = await lock.request('screen');
      if (ended) {
        await held.release();
        return;
      }
      awake.value = 'on';
      held.addEventListener('release', () => {
        if (ended) return;
        awake.value = 'refused';
        void take();
      });
    } catch {
      awake.value = 'refused';
    }
  };
  const again = (): void => void take();
  document.addEventListener('visibilitychange', again);
  void take();
  return () => {
    ended = true;
    document.removeEventListener('visibilitychange', again);
    void held?.release();
  };
}
