// Plain JavaScript, because it runs before TypeScript can be read.
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { setFlagsFromString } from 'node:v8';
import { Script } from 'node:vm';
import { scriptOf } from './script-of.mjs';

/** Packages that find files beside their own, or start programs. */
const APART = ['esbuild', 'highs', 'manifold-3d', 'puppeteer', '@sparticuz/chromium', 'tsx'];

/** Bundles of other states of the code that are left lying, for builds that still run by them. */
const OTHERS_LEFT = 4;

/**
 * Makes one plain program of the command: it starts without reading each file by itself, nothing in it is wrapped
 * function by function, and nothing of it is compiled again. Written beside its place and renamed, so that two first
 * starts do not meet.
 * @param {string} root folder of the package
 * @param {string} folder where the program is to be, for `load.mjs` to run: `./main.js` in it, and `./thread.js` for its threads
 * @param {string} mark the `codeMark` of the code
 */
export async function bundle(root, folder, mark) {
  const work = `${folder}.${process.pid}`;
  mkdirSync(work, { recursive: true, mode: 0o700 });
  try {
    const needs = {};
    for (const { name, text, imports } of await modulesOf(root, folder, mark)) {
      const { script, needs: own } = scriptOf(text, imports);
      needs[`./${name}`] = own;
      writeFileSync(join(work, name), script);
      writeFileSync(join(work, `${name}.code`), compiled(script, join(folder, name)));
    }
    writeFileSync(join(work, 'needs.json'), JSON.stringify(needs));
    symlinkSync(join(root, 'node_modules'), join(work, 'node_modules'), 'dir');
    renameSync(work, folder);
  } finally {
    rmSync(work, { recursive: true, force: true });
  }
  tidy(join(folder, '..'), folder);
}

/**
 * The modules of the program as esbuild makes them: our files and the packages they need, in as few as share them.
 * @param {string} root folder of the package
 * @param {string} folder where the program is to be
 * @param {string} mark the `codeMark` of the code
 * @returns {Promise<{ name: string, text: string, imports: { path: string, kind: string }[] }[]>} what each imports of the others is told as the others are named: `./main.js`
 */
export async function modulesOf(root, folder, mark) {
  const { build } = createRequire(import.meta.url)('esbuild');
  const { outputFiles, metafile } = await build({
    entryPoints: { main: join(root, 'src/cli/main.ts'), thread: join(root, 'src/cli/crew/thread.ts') }, outdir: root, absWorkingDir: root, write: false, metafile: true,
    bundle: true, splitting: true, format: 'esm', platform: 'node', target: 'node20',
    external: APART.flatMap((name) => [name, `${name}/*`]), jsx: 'automatic', logLevel: 'silent', legalComments: 'none',
    define: { 'process.env.NODE_ENV': '"production"', FOLDWRIGHT_CODE: JSON.stringify(mark), FOLDWRIGHT_PROGRAM: JSON.stringify(folder) },
    plugins: [ownPlaces(root)],
  });
  return outputFiles.map(({ path, text }) => {
    const name = basename(path);
    const imports = metafile.outputs[name].imports.map(({ path: from, kind, external }) => ({ path: external ? from : `./${from}`, kind }));
    return { name, text: inAscii(text), imports };
  });
}

/** Where esbuild leaves other letters as they are, in comments and patterns, they can be told by their numbers too. */
const inAscii = (text) => text.replace(/[^\0-\x7f]/g, (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`);

/** The compiled code of all functions of a script, for as long as V8 and its switches are the same; how it compiles is one of them. */
function compiled(text, filename) {
  setFlagsFromString('--no-lazy');
  const script = new Script(text, { filename });
  setFlagsFromString('--lazy');
  return script.createCachedData();
}

/** Each of our files goes on knowing where it lies in the package. */
const ownPlaces = (root) => ({
  name: 'own-places',
  setup({ onLoad }) {
    onLoad({ filter: /\.tsx?$/ }, ({ path }) => {
      if (!path.startsWith(join(root, 'src'))) return undefined;
      const text = readFileSync(path, 'utf8');
      return { contents: text.replaceAll('import.meta.url', JSON.stringify(pathToFileURL(path).href)), loader: path.endsWith('x') ? 'tsx' : 'ts' };
    });
  },
});

function tidy(home, kept) {
  const others = readdirSync(home).map((name) => join(home, name)).filter((path) => path !== kept && /[0-9a-f]{64}$/.test(path));
  const oldestLast = others.map((path) => ({ path, made: statSync(path).mtimeMs })).sort((one, other) => other.made - one.made);
  for (const { path } of oldestLast.slice(OTHERS_LEFT)) rmSync(path, { recursive: true, force: true });
}
