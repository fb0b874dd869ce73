import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, type Plugin } from 'esbuild';
import type { Answer } from './respond.ts';

const projectRoot = fileURLToPath(new URL('../../../', import.meta.url));
const browserRoom = fileURLToPath(new URL('../browser/', import.meta.url));

/** What only the command needs: the browser gets an empty one in its place, and SHA-256 by our own few lines. */
const notInTheBrowser: Plugin = {
  name: 'not-in-the-browser',
  setup: (given) => {
    given.onResolve({ filter: /^node:crypto$/ }, () => ({ path: `${browserRoom}sha256.ts`, sideEffects: false }));
    given.onResolve({ filter: /^(node:.*|puppeteer|@sparticuz\/chromium|pdf-lib|csv-parse\/sync|csv-stringify\/sync)$/ }, ({ path }) => ({ path, namespace: 'absent', sideEffects: false }));
    given.onLoad({ filter: /.*/, namespace: 'absent' }, () => ({ contents: 'module.exports = {};', loader: 'js' }));
  },
};

const program = (name: string): Answer => ({ type: 'application/wasm', body: readFileSync(createRequire(import.meta.url).resolve(name)) });

/** Scripts and style of the page, bundled from the sources in memory, and the programs of the solid kernel and the solver. */
export async function bundledAnswers(): Promise<ReadonlyMap<string, Answer>> {
  const { outputFiles } = await build({
    absWorkingDir: projectRoot,
    entryPoints: ['page.tsx', 'shaper.ts', 'planner.ts', 'printer.ts', 'mender.ts', 'page.css'].map((file) => `${browserRoom}${file}`),
    entryNames: '[name]',
    bundle: true,
    write: false,
    outdir: '/',
    format: 'esm',
    platform: 'browser',
    target: 'es2022',
    minify: true,
    jsx: 'automatic',
    define: { 'process.env.NODE_ENV': '"production"' },
    plugins: [notInTheBrowser],
    logLevel: 'silent',
  });
  return new Map([
    ...outputFiles.map(({ path, contents }): [string, Answer] => [`/${basename(path)}`, { type: path.endsWith('.css') ? 'text/css; charset=utf-8' : 'text/javascript; charset=utf-8', body: contents }]),
    ['/manifold.wasm', program('manifold-3d/manifold.wasm')],
    ['/highs.wasm', program('highs/runtime')],
  ]);
}
