import { isJobHash, readHash } from './link.ts';
import { refuse } from './notice.ts';
import { openText } from './open-text.ts';

/** Takes the job out of the address, so that a reload does not open it again over later work. */
function clearAddress(): void {
  try {
    history.replaceState(null, '', location.pathname + location.search);
  } catch {
    location.hash = '';
  }
}

async function takeLink(): Promise<void> {
  const { hash } = location;
  if (!isJobHash(hash)) return;
  clearAddress();
  const carried = readHash(hash);
  if (!carried.ok) {
    refuse('The job in the link could not be opened, so nothing was changed.', carried.issues);
    return;
  }
  await openText(carried.value, '', 'The job that came with the link', 'opening the job from a link');
}

/** Opens the job that the address carries, now and whenever another is put there. */
export async function takeLinks(): Promise<void> {
  addEventListener('hashchange', () => void takeLink());
  await takeLink();
}
