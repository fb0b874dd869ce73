#!/usr/bin/env node
// Starts the command; TypeScript is read as it is, by tsx, with this package's own settings wherever it is called from.
import { accessSync, constants } from 'node:fs';
import { tmpdir } from 'node:os';
import { fileURLToPath } from 'node:url';
import { register } from 'tsx/esm/api';

// Programs, browsers above all, need room for temporary files; without it they end in ways that tell nobody why.
try {
  accessSync(tmpdir(), constants.W_OK);
} catch (error) {
  process.stderr.write(`foldwright: ${tmpdir()}: no temporary file can be made (${error.code}); would be right: a folder that can be written, or another named by TMPDIR\n`);
  process.exit(3);
}

// React checks much more while it is developed with; none of it shows in a page.
process.env.NODE_ENV ??= 'production';
process.env.TSX_TSCONFIG_PATH = fileURLToPath(new URL('../../tsconfig.json', import.meta.url));
register();
await import('./main.ts');
