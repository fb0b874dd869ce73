#!/usr/bin/env node
// Starts the command; TypeScript is read as it is, by tsx, with this package's own settings wherever it is called from.
import { fileURLToPath } from 'node:url';
import { register } from 'tsx/esm/api';

// React checks much more while it is developed with; none of it shows in a page.
process.env.NODE_ENV ??= 'production';
process.env.TSX_TSCONFIG_PATH = fileURLToPath(new URL('../../tsconfig.json', import.meta.url));
register();
await import('./main.ts');
