import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { deflateRawSync } from 'node:zlib';
import { Resvg } from '@resvg/resvg-js';
import { build, defineConfig, type Plugin, type Rolldown } from 'vite';
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

/** Modules of which nothing is ever called here: clips by rectangles and triangles; forms, locks, archives and reading of PDF files, and the SVG in them. */
const NOT_CALLED = [
  /\/clipper2-ts\/dist\/(RectClip|Triangulation|Minkowski)\.js$/,
  /\/@cantoo\/pdf-lib\/es\/core\/(crypto|(parser|security|streams)\/(?!index)\w+)\.js$/,
  /\/@cantoo\/pdf-lib\/es\/api\/(svg|pdfa\/srgbProfile|(extraction|form)\/(?!index)\w+)\.js$/,
  /\/@cantoo\/pdf-lib\/es\/packages\/upng\/(dither|encode|quantize)\.js$/,
];

/** What stands in for a module of which nothing is called: all its names, none of what they do. */
function hollow(file: string): string {
  const code = readFileSync(file, 'utf8');
  const names = new Set<string>();
  for (const [, name] of code.matchAll(/^export (?:class|const|function|var) (\w+)/gm)) names.add(name!);
  for (const [, list] of code.matchAll(/^export \{([^}]*)\}/gm))
    for (const [, name] of list!.matchAll(/(\w+)\s*(?:,|$)/g)) names.add(name!);
  if (/^export default/m.test(code)) names.add('default');
  const list = [...names].map((name) => `none as ${name}`);
  return `function none() { throw new Error('left out of the page'); }\nexport { ${list.join(', ')} };`;
}

/** A face that the engine writes with and the page is set in. */
const LETTERS = /^@fontsource\/barlow\/files\/barlow-latin-(500|700)-normal\.woff\?inline$/;

/**
 * Modules that the page has its own of, or no use for: pictures are drawn by the browser, the PDF library is given no HTML or SVG to read and sets no type of
 * its own (all of it is outlines), and of all that
 * tidies an SVG only paths are (files made here have no style sheets).
 */
const instead: Plugin = {
  name: 'page-instead',
  enforce: 'pre',
  resolveId(id, from) {
    if (from?.includes('/src/write/') && /\/png\.ts$/.test(id)) return here('./src/page/engine/picture.ts');
    const letters = LETTERS.exec(id);
    if (letters) return `\0letters-${letters[1]}`;
    if (id === 'svgo/browser') return here('./node_modules/svgo/lib/svgo.js');
    if (from?.endsWith('/svgo/lib/svgo.js') && id === './builtin.js') return '\0paths-only';
    if (LEFT_OUT.includes(id)) return '\0unused';
    if (from?.endsWith('/standard-fonts/Font.js') && id.endsWith('.compressed.json')) return '\0no-font';
    return undefined;
  },
  load(id) {
    if (NOT_CALLED.some((some) => some.test(id))) return hollow(id);
    if (id.startsWith('\0letters-')) return `export default self.letters[${id.slice('\0letters-'.length)}];`;
    return { '\0unused': UNUSED, '\0no-font': "export default '';", '\0paths-only': PATHS_ONLY }[id];
  },
};

/** Folders of the packages that something in the page comes from. */
const packages = new Set<string>();
const keepPackage = (id: string): void => {
  const folder = /^.*\/node_modules\/(?:@[^/]+\/)?[^/]+/.exec(id.replace(/^\0/, ''))?.[0];
  if (folder !== undefined) packages.add(folder);
};

/** Takes note of the package of every module that is left in a bundle, and of the fonts that styles name. */
const gather: Plugin = {
  name: 'page-packages',
  enforce: 'pre',
  transform(code, id) {
    if (!id.endsWith('.css')) return;
    for (const [, path] of code.matchAll(/url\(["']?([\w@][^"':)]*)["']?\)/g))
      keepPackage(here(`./node_modules/${path}`));
  },
  renderChunk(_, { modules }) {
    for (const [id, { renderedLength }] of Object.entries(modules)) if (renderedLength > 0) keepPackage(id);
  },
};

/** Of packages that come without a licence file: who holds the copyright, as their repository says; and a package whose file has the words of the same licence. */
const NOTICES: Record<string, { holders: string; wordsOf: string }> = {
  saxes: {
    holders:
      'Copyright (c) Contributors\nCopyright (c) Isaac Z. Schlueter and Contributors (sax, from which saxes was forked)',
    wordsOf: 'yaml',
  },
};

const licenceFile = (folder: string): string | undefined => {
  const name = readdirSync(folder).find((file) => /^licen[cs]e/i.test(file));
  return name && readFileSync(join(folder, name), 'utf8').replaceAll('\r', '').trim();
};

function licenceOf(name: string, folder: string): string {
  const own = licenceFile(folder);
  if (own) return own;
  const notice = NOTICES[name];
  const words = notice && licenceFile(here(`./node_modules/${notice.wordsOf}`));
  if (!words) throw new Error(`${name} comes without a licence file; see NOTICES`);
  return `${notice.holders}\n\n${words.slice(words.indexOf('Permission'))}`;
}

/** Every package in the page, with its licence; each text once. */
function licences(): { parts: { name: string; version: string; licence: string; text: number }[]; texts: string[] } {
  const texts: string[] = [];
  const parts = [...packages].sort().map((folder) => {
    const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
    const words = licenceOf(name, folder);
    const known = texts.indexOf(words);
    const text = known < 0 ? texts.push(words) - 1 : known;
    return { name, version, licence: license, text };
  });
  return { parts, texts };
}

/** Puts the list of packages and their licences into the page, packed, and beside it as text. */
const madeOf: Plugin = {
  name: 'page-made-of',
  enforce: 'post',
  generateBundle: {
    order: 'post',
    handler(_, bundle) {
      const told = licences();
      const packed = deflateRawSync(JSON.stringify(told), { level: 9 }).toString('base64');
      const page = bundle['index.html'];
      if (page?.type === 'asset')
        page.source = String(page.source).replace(
          '</body>',
          () => `<script type="text/plain" id="made-of">${packed}</script></body>`,
        );
      const source = told.texts
        .map((text, at) => {
          const of = told.parts.filter((part) => part.text === at);
          return `${of.map(({ name, version, licence }) => `${name} ${version} (${licence})`).join('\n')}\n\n${text}\n`;
        })
        .join(`\n${'-'.repeat(80)}\n\n`);
      this.emitFile({ type: 'asset', fileName: 'licences.txt', source });
    },
  },
};

/** Modules that most looks take beside what the worker begins with. Whatever else is imported while it works is in the second script. */
const IN_LOOKS = [
  'compose/floor',
  'fit/fit',
  'job/house',
  'job/own-drawings',
  'job/read',
  'marks/floor/schedule',
  'motif/library',
  'room-border/compose',
  'room-border/marks',
  'room-pipeline',
  'site/build',
  'stairs/fit',
].map((name) => here(`./src/${name}.ts`));

/** Takes parts of the engine in, and gives them by name. What is not here yet comes with the rest, which is asked for once. */
const LOADER = `const parts = {}, made = {};
let rest;
const need = (name) => {
  if (!made[name]) {
    made[name] = { exports: {} };
    parts[name](need, made[name].exports, made[name], later);
  }
  return made[name].exports;
};
const later = async (name) => {
  if (!parts[name]) await (rest ??= self.fetchRest());
  return need(name);
};
self.takeParts = (more) => Object.assign(parts, more);
`;

type Chunk = Rolldown.OutputChunk;

/** An import while the engine works, as the bundler writes it for scripts that are all there. */
const IMPORTED = /Promise\.resolve\(\)\.then\(\(\)=>((?:[\w$]+\.[\w$]+\()?require\("([^"]+)"\))/g;

/** The text of a chunk as a part, which waits for what it imports while it works. */
function partOf({ fileName, code, imports, dynamicImports }: Chunk): string {
  const waits = code.replace(IMPORTED, (_, taken, name) => `later("${name}").then(()=>${taken}`);
  for (const name of dynamicImports) {
    const times = (text: string): number => waits.split(text).length - 1;
    const atOnce = imports.includes(name) ? 1 : 0;
    if (times(`require("./${name}")`) !== atOnce + times(`later("./${name}").then(()=>`))
      throw new Error(`${fileName} imports ${name} in a way that is not known here`);
  }
  return `"./${fileName}"(require,exports,module,later){${waits}\n}`;
}

const packed = (code: string): string => JSON.stringify(deflateRawSync(code, { level: 9 }).toString('base64'));

/** `virtual:engine`: the worker and all it needs, packed, as a script that it begins with and one that follows when it is needed. */
const engine: Plugin = {
  name: 'page-engine',
  resolveId: (id) => (id === 'virtual:engine' ? '\0engine' : undefined),
  async load(id) {
    if (id !== '\0engine') return undefined;
    const made = await build({
      configFile: false,
      logLevel: 'error',
      plugins: [instead, gather],
      build: {
        write: false,
        target: 'es2022',
        minify: true,
        lib: { entry: here('./src/page/engine/worker.ts'), formats: ['cjs'], fileName: 'worker' },
        rolldownOptions: { output: { chunkFileNames: '[name]' } },
      },
      define: { 'process.env.NODE_ENV': '"production"' },
    });
    const { output } = (Array.isArray(made) ? made[0] : made) as Rolldown.RolldownOutput;
    const chunks = output.filter((one) => one.type === 'chunk');
    const atOnce = new Set<string>();
    const take = (name: string): void => {
      const chunk = chunks.find(({ fileName }) => fileName === name);
      if (!chunk || atOnce.has(name)) return;
      atOnce.add(name);
      chunk.imports.forEach(take);
    };
    const gone = IN_LOOKS.filter((id) => !chunks.some(({ moduleIds }) => moduleIds.includes(id)));
    if (gone.length > 0) throw new Error(`looks take what is not there: ${gone.join(', ')}`);
    for (const { fileName, isEntry, moduleIds } of chunks)
      if (isEntry || moduleIds.some((id) => IN_LOOKS.includes(id))) take(fileName);
    const scriptOf = (some: Chunk[]): string => `self.takeParts({${some.map(partOf).join(',')}});`;
    const entry = chunks.find(({ isEntry }) => isEntry)!.fileName;
    const first = scriptOf(chunks.filter(({ fileName }) => atOnce.has(fileName)));
    if (first.includes('self.letters')) throw new Error('the letters come only with the second script');
    const rest = scriptOf(chunks.filter(({ fileName }) => !atOnce.has(fileName)));
    return [
      `export const first = ${packed(`(() => {${LOADER}${first}need(${JSON.stringify(`./${entry}`)})})()`)};`,
      `export const rest = ${packed(rest)};`,
    ].join('\n');
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
  plugins: [instead, gather, engine, viteSingleFile({ removeViteModuleLoader: true }), policy, madeOf, icons],
  build: { outDir: here('./dist/page'), emptyOutDir: true, target: 'es2022', minify: true },
  // Never the form for developers, which carries the paths of the sources, whatever NODE_ENV says.
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact', development: false } },
});
