import { mkdirSync, writeFileSync } from 'node:fs';
import { allMotifs } from '../../src/motif/library.ts';
import { writeGallery } from '../../src/write/gallery.ts';
import { renderPng } from '../../src/write/png.ts';

/** Draws every motif into one picture for the README: `npm run gallery`. */
const OUT = 'samples/pictures';
const LONG_SIDE = 1800;

mkdirSync(OUT, { recursive: true });
const started = performance.now();
const svg = await writeGallery(allMotifs());
const seconds = ((performance.now() - started) / 1000).toFixed(2);
writeFileSync(`${OUT}/motifs.png`, await renderPng(svg, LONG_SIDE));
console.log(`${OUT}/motifs.png: ${allMotifs().length} motifs drawn in ${seconds} s`);
