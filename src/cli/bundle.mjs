// Plain JavaScript, because it runs before TypeScript can be read.
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, symlinkSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

/** Packages that find files beside their own, or start programs. */
const APART = ['esbuild', 'highs', 'manifold-3d', 'puppeteer', '@sparticuz/chromium', 'tsx'];

/** Bundles of other states of the code that are left lying, for builds that still run by them. */
const OTHERS_LEFT = 4;

/**
 * Makes one plain program of the command: it starts without reading each file by itself, and nothing in it is wrapped
 * function by function. Written beside its place and renamed, so that two first starts do not meet.
 * @param {string} root folder of the package
 * @param {string} folder where the program is to be, `main.js` in it, and `thread.js` for its threads
 * @param {string} mark the `codeMark` of the code
 */
export async function bundle(root, folder, mark) {
  const work = `${folder}.${process.pid}`;
  const { build } = createRequire(import.meta.url)('esbuild');
  mkdirSync(work, { recursive: true, mode: 0o700 });
  try {
    await build({
      entryPoints: { main: join(root, 'src/cli/main.ts'), thread: join(root, 'src/cli/crew/thread.ts') }, outdir: work, bundle: true, splitting: true, format: 'esm', platform: 'node', target: 'node20',
      external: APART.flatMap((name) => [name, `${name}/*`]), jsx: 'automatic', logLevel: 'silent', 
      define: { 'process.env.NODE_ENV': '"production"', FOLDWRIGHT_CODE: JSON.stringify(mark), FOLDWRIGHT_PROGRAMS: JSON.stringify(pathToFileURL(join(folder, '/')).href) },
      banner: { js: `import { createRequire as requireFrom } from 'node:module'; const require = requireFrom(${JSON.stringify(pathToFileURL(join(root, 'package.json')).href)});` },
      plugins: [ownPlaces(root)],
    });
    symlinkSync(join(root, 'node_modules'), join(work, 'node_modules'), 'dir');
    renameSync(work, folder);
  } finally {
    rmSync(work, { recursive: true, force: true });
  }
  tidy(join(folder, '..'), folder);
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
