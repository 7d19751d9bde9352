import { expect } from 'vitest';

/** Bytes are compared as bytes: number by number takes seconds for a picture. Which of them differ is told as it always is. */
expect.addEqualityTesters([
  (one: unknown, other: unknown): boolean | undefined =>
    one instanceof Uint8Array && other instanceof Uint8Array && Buffer.compare(one, other) === 0 ? true : undefined,
]);
