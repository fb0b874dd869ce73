/*
 * Notes in seconds.json how long the long files took, from the report of a whole run:
 * npx vitest run --reporter=json --outputFile=run.json; npx tsx tests/support/write-seconds.ts run.json
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { relative } from 'node:path';
import { fileURLToPath } from 'node:url';

interface Run {
  readonly testResults: readonly { readonly name: string; readonly startTime: number; readonly endTime: number }[];
}

/** Files that take less, s, make no difference in which order they come. */
const LEAST = 5;

const root = fileURLToPath(new URL('../..', import.meta.url));
const { testResults } = JSON.parse(readFileSync(process.argv[2] ?? '', 'utf8')) as Run;
const taken = testResults.map(({ name, startTime, endTime }) => [relative(root, name), Math.round((endTime - startTime) / 1000)] as const);
const longest = taken.filter(([, seconds]) => seconds >= LEAST).sort(([one, a], [other, b]) => b - a || (one < other ? -1 : 1));
writeFileSync(new URL('seconds.json', import.meta.url), `${JSON.stringify(Object.fromEntries(longest), null, 2)}\n`);
