import { defineConfig } from 'vite';
import { aliases } from './vite.config.ts';

/** Builds the benchmarks, so that what is timed is what is shipped and not a test runner's copy. */
export default defineConfig({
  resolve: { alias: aliases },
  build: {
    ssr: 'tests/bench/run.ts',
    outDir: 'node_modules/.cache/evenfield-bench',
    target: 'node20',
    minify: false,
    rollupOptions: { output: { entryFileNames: '[name].js' } },
  },
});
