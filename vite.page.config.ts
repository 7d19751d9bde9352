import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { deflateRawSync } from 'node:zlib';
import { Resvg } from '@resvg/resvg-js';
import { build, defineConfig, type Plugin } from 'vite';
import { viteSingleFile } from 'vite-plugin-singlefile';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** Takes the place of what only other callers of a library use. */
const UNUSED = `
const none = () => { throw new Error('left out of the page'); };
export default none;
export const encode = none, parse = none, selectAll = none, selectOne = none, is = none, walk = Object.assign(none, { skip: none });
export const clone = none, generate = none, syntax = {}, HTMLElement = none, NodeType = {};`;
const LEFT_OUT = ['node-html-better-parser', 'html-entities', 'css-tree', 'css-what', 'css-select', 'csso'];
const PATHS_ONLY = `import * as convertPathData from '${here('./node_modules/svgo/plugins/convertPathData.js')}'; export const builtinPlugins = [convertPathData];`;

/**
 * Modules that the page has its own of, or no use for: pictures are drawn by the browser, the PDF library is given no HTML, SVG or PNG to read and sets no type of
 * its own (all of it is outlines), and of all that
 * tidies an SVG only paths are (files made here have no style sheets).
 */
const instead: Plugin = {
  name: 'page-instead',
  enforce: 'pre',
  resolveId(id, from) {
    if (from?.includes('/src/write/') && /\/png\.ts$/.test(id)) return here('./src/page/engine/picture.ts');
    if (id === 'svgo/browser') return here('./node_modules/svgo/lib/svgo.js');
    if (from?.endsWith('/svgo/lib/svgo.js') && id === './builtin.js') return '\0paths-only';
    if (LEFT_OUT.includes(id)) return '\0unused';
    if (from?.includes('/@cantoo/pdf-lib/') && /upng\/index\.js$/.test(id)) return '\0unused';
    if (from?.endsWith('/standard-fonts/Font.js') && id.endsWith('.compressed.json')) return '\0no-font';
    return undefined;
  },
  load: (id) => ({ '\0unused': UNUSED, '\0no-font': "export default '';", '\0paths-only': PATHS_ONLY })[id],
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
          "worker-src blob: 'self'",
          "style-src 'unsafe-inline'",
          "img-src blob: data: 'self'",
          'font-src data:',
          "connect-src 'none'",
          "manifest-src 'self'",
          "form-action 'none'",
          "base-uri 'none'",
        ].join('; ');
        file.source = html.replace('<!-- policy -->', `<meta http-equiv="Content-Security-Policy" content="${says}">`);
      }
    },
  },
};

/** The icon in the sizes that phones ask for. */
const icons: Plugin = {
  name: 'page-icons',
  generateBundle() {
    const svg = readFileSync(here('./src/page/public/icon.svg'), 'utf8');
    for (const size of [192, 512]) {
      const source = new Resvg(svg, { fitTo: { mode: 'width', value: size } }).render().asPng();
      this.emitFile({ type: 'asset', fileName: `icon-${size}.png`, source });
    }
  },
};

/** Builds the page: one file that needs no server and no network. The files beside it only serve to install it from a web server. */
export default defineConfig({
  root: here('./src/page'),
  plugins: [instead, engine, viteSingleFile({ removeViteModuleLoader: true }), policy, icons],
  build: { outDir: here('./dist/page'), emptyOutDir: true, target: 'es2022', minify: true },
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
});
