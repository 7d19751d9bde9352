import { effect, signal } from '@preact/signals';

const KEY = 'evenfield-on-floor';

function wasOpen(): boolean {
  try {
    return localStorage.getItem(KEY) !== null;
  } catch {
    return false;
  }
}

/** Whether the view for the floor is open: one mark at a time in large figures. It stays so over a reload. */
export const onFloor = signal(wasOpen());

effect(() => {
  try {
    if (onFloor.value) localStorage.setItem(KEY, 'open');
    else localStorage.removeItem(KEY);
  } catch {
    // It is open until the page is left.
  }
});

const isMarked = (): boolean => (history.state as { floor?: true } | null)?.floor === true;

/** The way back of the browser, or of the phone, leads off the floor and not out of the page. Gives what ends that. */
export function takeWayBack(): () => void {
  try {
    if (!isMarked()) history.pushState({ ...history.state, floor: true }, '');
  } catch {
    // Then only the button leads back.
  }
  const left = (): void => {
    if (!isMarked()) onFloor.value = false;
  };
  addEventListener('popstate', left);
  return () => removeEventListener('popstate', left);
}

export function leaveFloor(): void {
  if (isMarked()) history.back();
  else onFloor.value = false;
}
