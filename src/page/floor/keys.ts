import { back, changed, made, stop, undoTick, view } from './state.ts';

const isTyped = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && /^(INPUT|SELECT|TEXTAREA)$/.test(target.tagName);
const isPressed = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.closest('button, a, summary') !== null;

const isWalking = (): boolean => view.value === 'walk' && changed.value === '';

/** Enter, Space and the right arrow tick what is shown, the left arrow goes back; a key that is held down ticks once. Gives what ends that. */
export function takeFloorKeys(): () => void {
  const take = (event: KeyboardEvent): void => {
    const { key, target } = event;
    if ((event.ctrlKey || event.metaKey) && !event.altKey && key.toLowerCase() === 'z') {
      if (isTyped(target)) return;
      event.preventDefault();
      if (!event.repeat && !event.shiftKey && isWalking()) undoTick();
      return;
    }
    if (event.ctrlKey || event.metaKey || event.altKey || isTyped(target)) return;
    if (event.repeat && (key === 'Enter' || key === ' ')) {
      event.preventDefault();
      return;
    }
    if (event.repeat || !isWalking()) return;
    const isOn = key === 'ArrowRight' || ((key === 'Enter' || key === ' ') && !isPressed(target));
    if (key === 'ArrowLeft') back();
    else if (!isOn) return;
    // Whether a check is right has to be said, not passed.
    else if (stop.value?.kind !== 'check') made();
    event.preventDefault();
  };
  addEventListener('keydown', take);
  return () => removeEventListener('keydown', take);
}
