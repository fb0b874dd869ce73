import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { GANTRY, workshopWithGantry } from './gantry.ts';
import type { Workshop } from './workshop.ts';

const program = fileURLToPath(new URL('../../src/cli/foldwright.mjs', import.meta.url));
const PICTURE = 'out/gantry/low/gantry-low.svg';

let shop: Workshop;
let watching: ChildProcess;
let [out, told] = ['', ''];
let heard: () => void = () => undefined;
beforeAll(() => {
  shop = workshopWithGantry();
  watching = spawn(process.execPath, [program, 'watch', 'gantry', '--size', 'low', '--lang', 'en', '--edition', 'pictures', '--paper', 'a4', '--out', 'out'], { cwd: shop.folder, stdio: ['ignore', 'pipe', 'pipe'] });
  watching.stdout?.on('data', (piece: Buffer) => { out += piece.toString(); heard(); });
  watching.stderr?.on('data', (piece: Buffer) => { told += piece.toString(); heard(); });
});
afterAll(() => {
  watching.kill();
  shop.close();
});

/** Waits for what comes on standard output or beside it, and for nothing else. */
async function until(isSo: () => boolean): Promise<void> {
  while (!isSo()) await new Promise<void>((resolve) => { heard = resolve; });
}
const pictures = (): number => out.split(PICTURE).length - 1;
const complaints = (): readonly string[] => told.split('\n').filter((line) => line !== '' && !/^foldwright: \d+ %/.test(line));

it('draws the item and makes its booklets, at once and again when its text is saved', async () => {
  await until(() => out.includes('gantry-low-pictures.pdf'));
  expect(pictures()).toBe(1);
  const first = shop.read(PICTURE).toString();
  shop.write(GANTRY, shop.read(GANTRY).toString().replace(/^( {2}low:\n(?: {4}.*\n)*? {4}height: )(\d+)/m, (_all, before: string, height: string) => `${before}${Number(height) + 20}`));
  await until(() => pictures() >= 2);
  expect(shop.read(PICTURE).toString()).not.toBe(first);
  await until(() => out.lastIndexOf('gantry-low-pictures.pdf') > out.lastIndexOf(PICTURE));
  expect(complaints()).toEqual([]);
});

it('tells a mistake in one message and goes on watching', async () => {
  const right = shop.read(GANTRY).toString();
  shop.write(GANTRY, right.replace(/^sizes:/m, 'sizzes:'));
  await until(() => complaints().length > 0);
  shop.write(GANTRY, `${right}# saved again\n`);
  await until(() => pictures() >= 3);
  expect(complaints().every((line) => line.startsWith('steps/gantry/item.yaml:'))).toBe(true);
  expect(new Set(complaints()).size).toBe(complaints().length);
});

it('ends when it is told to, and leaves nothing unfinished', async () => {
  const gone = once(watching, 'exit');
  watching.kill('SIGTERM');
  expect(await gone).toEqual([0, null]);
  expect(shop.files().filter((path) => path.includes('unfinished') && path.startsWith('out'))).toEqual([]);
});
