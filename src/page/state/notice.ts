import { signal } from '@preact/signals';
import type { Issue } from '../../issue.ts';

/** What is told once, at the head of the page, until it is read. */
export interface Notice {
  kind: 'done' | 'refused';
  says: string;
  /** What is wrong, and what to write instead. */
  issues?: readonly Issue[];
}

export const notice = signal<Notice | undefined>(undefined);

export function tell(says: string): void {
  notice.value = { kind: 'done', says };
}

export function refuse(says: string, issues: readonly Issue[] = []): void {
  notice.value = { kind: 'refused', says, issues };
}
