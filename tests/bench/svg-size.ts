import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { optimize } from 'svgo';
import { good } from '../../src/issue.ts';
import { makeFiles } from '../../src/pipeline.ts';
import type { Row } from './row.ts';

/** Share of a file that may be left to save. */
const LIMIT = 0.02;
/** Decimals of a millimetre that the stencils are tidied with. */
const DECIMALS = 4;

/**
 * The same drawing as small as svgo makes it, gone over until nothing more is saved. Kept are what a reader of the file looks at: ids, data attributes, every window a path of its own,
 * size in millimetres, title and description; and curves that a cutter can follow.
 */
const smallest = (svg: string): number =>
  Buffer.byteLength(
    optimize(svg, {
      multipass: true,
      floatPrecision: DECIMALS,
      js2svg: { indent: 0, pretty: false },
      plugins: [
        {
          name: 'preset-default',
          params: {
            overrides: {
              cleanupIds: false,
              mergePaths: false,
              removeDesc: false,
              removeHiddenElems: false,
              collapseGroups: false,
              removeComments: false,
              convertShapeToPath: false,
              convertPathData: { makeArcs: { threshold: 0, tolerance: 0 }, straightCurves: false },
            },
          },
        },
      ],
    }).data,
  );

/** What svgo could still save of every SVG that `make` writes of the samples. */
export async function bench(): Promise<Row[]> {
  const sizes = new Map<string, { own: number; least: number }>();
  for (const sample of readdirSync('samples').filter((name) => name.endsWith('.job.yaml'))) {
    const text = readFileSync(join('samples', sample), 'utf8');
    const made = await makeFiles(text, sample, 1, async (path) =>
      good(new Uint8Array(readFileSync(join('samples', path)))),
    );
    if (!made.ok) throw new Error(`${sample}: ${made.issues[0]!.says}`);
    for (const [file, content] of made.value.files) {
      if (!file.endsWith('.svg') || typeof content !== 'string') continue;
      const kind = file.replace(/-.*|\.svg$/g, '');
      const sum = sizes.get(kind) ?? { own: 0, least: 0 };
      sum.own += Buffer.byteLength(content);
      sum.least += smallest(content);
      sizes.set(kind, sum);
    }
  }
  return [...sizes].map(([kind, { own, least }]) => {
    const left = (own - least) / own;
    return {
      row: `svg: ${kind} of all samples, beside svgo's best`,
      figure: `${(100 * left).toFixed(1)} % left to save of ${(own / 1000).toFixed(0)} kB`,
      limit: `at most ${100 * LIMIT} %`,
      holds: left <= LIMIT,
    };
  });
}
