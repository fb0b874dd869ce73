import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PNG } from 'pngjs';

/** A page as a mono printer gets it: grey levels row by row, 0 black … 255 white. */
export interface MonoPage {
  readonly width: number;
  readonly height: number;
  readonly levels: Uint8Array;
}

/** A page of a PDF (from 1) at 300 dots an inch, in grey or dithered to black and white, by poppler. */
export function monoPage(pdf: Uint8Array, page: number, how: 'gray' | 'mono'): MonoPage {
  const folder = mkdtempSync(join(tmpdir(), 'mono-'));
  try {
    writeFileSync(join(folder, 'in.pdf'), pdf);
    execFileSync('pdftoppm', ['-r', '300', `-${how}`, '-png', '-f', String(page), '-l', String(page), '-singlefile', join(folder, 'in.pdf'), join(folder, 'out')]);
    const { width, height, data } = PNG.sync.read(readFileSync(join(folder, 'out.png')));
    return { width, height, levels: Uint8Array.from({ length: width * height }, (_, index) => data[4 * index] ?? 255) };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Grey levels that fill areas of a page: those of at least `least` pixels whose four neighbours are of the same level, rising. */
export function plateaus({ width, height, levels }: MonoPage, least: number): readonly number[] {
  const counts = new Array<number>(256).fill(0);
  for (let y = 1; y < height - 1; y += 1) {
    for (let x = 1; x < width - 1; x += 1) {
      const at = y * width + x;
      const level = levels[at] ?? 0;
      if (levels[at - 1] === level && levels[at + 1] === level && levels[at - width] === level && levels[at + width] === level) counts[level] = (counts[level] ?? 0) + 1;
    }
  }
  return counts.flatMap((count, level) => (count >= least ? [level] : []));
}

/** Share of black in the dithered page where the grey one has a level, away from edges. */
export function blackShare(grey: MonoPage, dithered: MonoPage, level: number): number {
  const { width, height, levels } = grey;
  let [all, black] = [0, 0];
  for (let y = 2; y < height - 2; y += 1) {
    for (let x = 2; x < width - 2; x += 1) {
      const at = y * width + x;
      const inside = [0, -2, 2, -2 * width, 2 * width].every((step) => levels[at + step] === level);
      if (!inside) continue;
      all += 1;
      if ((dithered.levels[at] ?? 255) < 128) black += 1;
    }
  }
  return all === 0 ? NaN : black / all;
}
