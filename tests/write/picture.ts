import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import pixelmatch from 'pixelmatch';
import { PNG } from 'pngjs';
import { expect } from 'vitest';
import { renderPng } from '../../src/write/png.ts';

/** References are small, so that looking at them is quick and the repository stays light. */
const LARGEST = 20 * 1024;
/** Share of the pixels that may differ: edges are blended a little differently from one machine to the next. */
const SHARE = 0.005;

/**
 * Compares a drawing with its reference in `refs/`. With UPDATE_REFS=1 in the environment the reference is written instead; look at it
 * before it is committed.
 */
export async function expectPicture(svg: string, name: string, longSide: number): Promise<void> {
  const file = new URL(`refs/${name}.png`, import.meta.url);
  const made = await renderPng(svg, longSide);
  if (process.env.UPDATE_REFS === '1') writeFileSync(file, made);
  expect(existsSync(file), `${name}.png is missing`).toBe(true);
  const kept = readFileSync(file);
  expect(kept.length).toBeLessThanOrEqual(LARGEST);
  const [one, other] = [PNG.sync.read(Buffer.from(made)), PNG.sync.read(kept)];
  expect([one.width, one.height]).toEqual([other.width, other.height]);
  const differ = pixelmatch(one.data, other.data, undefined, one.width, one.height, { threshold: 0.1 });
  expect(differ / (one.width * one.height)).toBeLessThanOrEqual(SHARE);
}
