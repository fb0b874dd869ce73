#!/usr/bin/env node
// Starts the command: as one bundled program, made at the first start; where none can be made, TypeScript is read as it is, by tsx.
import { createHash } from 'node:crypto';
import { accessSync, constants, existsSync } from 'node:fs';
import { homedir, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { setFlagsFromString } from 'node:v8';
import { codeMark } from '../keep/code-mark.mjs';
import { run } from './program/load.mjs';

// Programs, browsers above all, need room for temporary files; without it they end in ways that tell nobody why.
try {
  accessSync(tmpdir(), constants.W_OK);
} catch (error) {
  process.stderr.write(`foldwright: ${tmpdir()}: no temporary file can be made (${error.code}); would be right: a folder that can be written, or another named by TMPDIR\n`);
  process.exit(3);
}

// A command is short: what runs a few times is not worth optimising, and compiling it all took a fifth of the processor's
// time. Measured with V8 11, which Node 20 has; others may not know the word.
if (process.versions.v8.startsWith('11.')) setFlagsFromString('--interrupt-budget=400000');

// React checks much more while it is developed with; none of it shows in a page.
process.env.NODE_ENV ??= 'production';
const root = fileURLToPath(new URL('../../', import.meta.url));

/** The folder of the bundled program of the code as it is, or null. */
async function bundled() {
  if (process.env.NODE_ENV !== 'production' || process.env.FOLDWRIGHT_BUNDLE === '') return null;
  const mark = codeMark(root);
  // Each copy of the code has its own: the bundle reads packages and files where they lie in that copy.
  const own = createHash('sha256').update(`${mark}\0${root}`).digest('hex');
  const folder = join(process.env.XDG_CACHE_HOME || join(homedir(), '.cache'), 'foldwright', 'code', own);
  const isThere = () => existsSync(join(folder, 'main.js'));
  try {
    if (!isThere()) await (await import('./program/bundle.mjs')).bundle(root, folder, mark);
  } catch {
    // Another first start may have been quicker; else the command works unbundled too, only slower.
  }
  return isThere() ? folder : null;
}

const program = await bundled();
if (program !== null) {
  await run(program, './main.js');
} else {
  const { register } = await import('tsx/esm/api');
  process.env.TSX_TSCONFIG_PATH = join(root, 'tsconfig.json');
  register();
  await import('./main.ts');
}
