import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { expect, it } from 'vitest';

const source = fileURLToPath(new URL('../../src/', import.meta.url));

const files = readdirSync(source, { recursive: true, encoding: 'utf8' }).filter((name) => /\.tsx?$/.test(name)).sort();

/** Files of the source that a file imports, also those of which it needs only types. */
const importsOf = (file: string): string[] =>
  ts.preProcessFile(readFileSync(join(source, file), 'utf8')).importedFiles
    .map(({ fileName }) => fileName)
    .filter((name) => name.startsWith('.'))
    .map((name) => relative(source, join(source, dirname(file), name)));

const graph = new Map(files.map((file) => [file, importsOf(file)]));

/** Takes off, again and again, the files that import none of those left: what stays is on a circle or leads to one. */
function onCircles(left: ReadonlySet<string>): ReadonlySet<string> {
  const kept = new Set([...left].filter((file) => graph.get(file)?.some((other) => left.has(other))));
  return kept.size === left.size ? kept : onCircles(kept);
}

it('no file imports itself by way of others', () => {
  expect(files.length).toBeGreaterThan(600);
  expect([...graph.values()].flat().length).toBeGreaterThan(files.length);
  expect([...onCircles(new Set(files))]).toEqual([]);
});
