import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { LongestFirst } from './tests/support/longest-first.ts';

/** Libraries taken in one file where they ship one: hundreds of small modules take several times as long to load. */
export const aliases = {
  '@cantoo/pdf-lib': fileURLToPath(new URL('./node_modules/@cantoo/pdf-lib/dist/pdf-lib.esm.min.js', import.meta.url)),
  'culori/fn': fileURLToPath(new URL('./node_modules/culori/bundled/culori.min.mjs', import.meta.url)),
};

/** Builds the command line and the engine for other programs (`vite build`), and runs the tests (`vitest`). Libraries stay outside the bundle. */
export default defineConfig({
  resolve: { alias: aliases },
  build: {
    ssr: true,
    outDir: 'dist',
    target: 'node20',
    minify: false,
    rollupOptions: {
      input: { evenfield: 'src/cli/evenfield.ts', index: 'src/index.ts' },
      output: { entryFileNames: '[name].js', chunkFileNames: 'parts/[name]-[hash].js' },
    },
  },
  test: {
    include: ['tests/**/*.test.ts'],
    // Ready to run as it is; reading through it would take seconds in every test file.
    server: { deps: { external: [/pdf-lib\.esm/, /culori\.min/] } },
    // Test files share what they have loaded; nothing in the engine keeps state that a test could see.
    isolate: false,
    // Every core: one that is left free, as is usual, would be half of two.
    maxWorkers: '100%',
    sequence: { sequencer: LongestFirst },
    globalSetup: ['tests/cli/build.ts'],
    setupFiles: ['tests/support/chances.ts', 'tests/support/bytes.ts'],
    testTimeout: 180_000,
    hookTimeout: 300_000,
  },
});
