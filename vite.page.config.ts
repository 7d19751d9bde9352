import { createHash } from 'node:crypto';
import { fileURLToPath } from 'node:url';
import { deflateRawSync } from 'node:zlib';
import { build, defineConfig, type Plugin } from 'vite';
import { viteSingleFile } from 'vite-plugin-singlefile';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** Modules that the page has its own of, or no use for. */
const instead: Plugin = {
  name: 'page-instead',
  enforce: 'pre',
  resolveId(id, from) {
    if (from?.includes('/src/write/') && /\/png\.ts$/.test(id)) return here('./src/page/engine/picture.ts');
    // What the PDF library reads HTML with, to draw SVG that nobody here draws.
    if (id === 'node-html-better-parser') return '\0nothing';
    return undefined;
  },
  load: (id) =>
    id === '\0nothing'
      ? 'export const parse = undefined; export class HTMLElement {}; export const NodeType = {};'
      : undefined,
};

/** `virtual:engine`: the worker and all it needs as one script, packed. */
const engine: Plugin = {
  name: 'page-engine',
  resolveId: (id) => (id === 'virtual:engine' ? '\0engine' : undefined),
  async load(id) {
    if (id !== '\0engine') return undefined;
    const made = await build({
      configFile: false,
      logLevel: 'error',
      plugins: [instead],
      build: {
        write: false,
        target: 'es2022',
        minify: true,
        lib: { entry: here('./src/page/engine/worker.ts'), formats: ['iife'], name: 'evenfield' },
      },
      define: { 'process.env.NODE_ENV': '"production"' },
    });
    const { output } = (Array.isArray(made) ? made[0] : made) as { output: { type: string; code?: string }[] };
    const code = output.find(({ type }) => type === 'chunk')!.code!;
    return `export default ${JSON.stringify(deflateRawSync(code, { level: 9 }).toString('base64'))};`;
  },
};

/** Nothing may be fetched, and no script but those of the file runs. */
const policy: Plugin = {
  name: 'page-policy',
  enforce: 'post',
  generateBundle: {
    order: 'post',
    handler(_, bundle) {
      for (const file of Object.values(bundle)) {
        if (file.type !== 'asset' || !file.fileName.endsWith('.html')) continue;
        const html = String(file.source);
        const scripts = [...html.matchAll(/<script[^>]*>([\s\S]*?)<\/script>/g)].map(
          ([, code]) => `'sha256-${createHash('sha256').update(code!).digest('base64')}'`,
        );
        const says = [
          "default-src 'none'",
          `script-src ${scripts.join(' ')} blob:`,
          'worker-src blob:',
          "style-src 'unsafe-inline'",
          'img-src blob: data:',
          'font-src data:',
          "connect-src 'none'",
          "form-action 'none'",
          "base-uri 'none'",
        ].join('; ');
        file.source = html.replace('<!-- policy -->', `<meta http-equiv="Content-Security-Policy" content="${says}">`);
      }
    },
  },
};

/** Builds the page: one file that needs no server and no network. */
export default defineConfig({
  root: here('./src/page'),
  plugins: [instead, engine, viteSingleFile({ removeViteModuleLoader: true }), policy],
  build: { outDir: here('./dist/page'), emptyOutDir: true, target: 'es2022', minify: true },
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
});
