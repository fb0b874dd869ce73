import { readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { GANTRY, workshopWithGantry } from './gantry.ts';
import type { Workshop } from './workshop.ts';

let shop: Workshop;
beforeAll(() => { shop = workshopWithGantry(); });
afterAll(() => { shop.close(); });

const make = (out: string, ...more: readonly string[]): ReturnType<Workshop['run']> =>
  shop.run(['make', 'gantry', '--size', 'low', '--lang', 'en', '--edition', 'words', '--paper', 'a4', '--out', out, ...more]);
const kept = (): readonly string[] => readdirSync(join(shop.folder, 'kept'), { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
const built = (out: string): Record<string, string> => Object.fromEntries(shop.files().filter((path) => path.startsWith(`${out}/`))
  .map((path) => [path.slice(out.length), shop.read(path).toString('base64')]));

it('what is kept gives what a clean build gives, byte for byte, and says the same', async () => {
  const clean = await make('clean', '--no-cache');
  expect(clean).toMatchObject({ code: 0, told: '' });
  expect((await make('first', '--cache', 'kept')).code).toBe(0);
  expect(kept().length).toBeGreaterThan(5);
  const again = await make('again', '--cache', 'kept');
  expect(again).toMatchObject({ code: 0, told: '', out: clean.out.replaceAll('clean/', 'again/') });
  expect(built('first')).toEqual(built('clean'));
  expect(built('again')).toEqual(built('clean'));
});

it('a file that was changed where it lies is put right, and damaged results are made again', async () => {
  const [file = ''] = Object.keys(built('again')).filter((path) => path.endsWith('.pdf'));
  shop.write(`again${file}`, 'not a booklet');
  expect((await make('again', '--cache', 'kept')).code).toBe(0);
  expect(built('again')).toEqual(built('clean'));
  for (const path of kept()) {
    const bytes = readFileSync(path);
    bytes[bytes.length - 1] = (bytes.at(-1) ?? 0) ^ 1;
    writeFileSync(path, bytes);
  }
  rmSync(join(shop.folder, 'again'), { recursive: true });
  expect((await make('again', '--cache', 'kept')).code).toBe(0);
  expect(built('again')).toEqual(built('clean'));
});

it('another text is another item: its record follows, though what looks the same is not printed again', async () => {
  shop.write(GANTRY, `# a remark\n${shop.read(GANTRY).toString()}`);
  expect((await make('remark', '--cache', 'kept')).code).toBe(0);
  const differing = Object.entries(built('remark')).filter(([path, content]) => built('clean')[path] !== content).map(([path]) => path);
  expect(differing).toEqual([expect.stringMatching(/build\.json$/)]);
});
