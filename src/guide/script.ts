import { fileURLToPath } from 'node:url';
import { buildSync } from 'esbuild';

/**
 * The guide's own script as one text, for browsers of about 2018 on: later syntax is rewritten, later functions are
 * kept out by a test. Starts the bundler.
 */
export function guideScript(): string {
  const { outputFiles: [script] } = buildSync({
    entryPoints: [fileURLToPath(new URL('browser/main.ts', import.meta.url))],
    bundle: true,
    minify: true,
    write: false,
    format: 'iife',
    target: ['es2017', 'chrome60', 'firefox60'],
    logLevel: 'silent',
    charset: 'utf8',
    legalComments: 'none',
  });
  if (script === undefined) throw new Error('the guide\'s script came out empty');
  return script.text.trim();
}
