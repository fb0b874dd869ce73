import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

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
    execFileSync('pdftoppm', ['-r', '300', `-${how}`, '-f', String(page), '-l', String(page), '-singlefile', join(folder, 'in.pdf'), join(folder, 'out')]);
    return how === 'gray' ? readGrey(readFileSync(join(folder, 'out.pgm'))) : readDots(readFileSync(join(folder, 'out.pbm')));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** A raw portable graymap of 8 bits: netpbm's pgm(5), from memory. */
function readGrey(file: Buffer): MonoPage {
  const [head, width, height] = headOf(file, /^P5\s+(\d+)\s+(\d+)\s+255\s/);
  return { width, height, levels: new Uint8Array(file.subarray(head, head + width * height)) };
}

/** A raw portable bitmap, rows filled up to whole bytes, 1 is black: netpbm's pbm(5), from memory. */
function readDots(file: Buffer): MonoPage {
  const [head, width, height] = headOf(file, /^P4\s+(\d+)\s+(\d+)\s/);
  const row = Math.ceil(width / 8);
  const levels = new Uint8Array(width * height);
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) levels[y * width + x] = ((file[head + y * row + (x >> 3)] ?? 0) >> (7 - (x & 7))) & 1 ? 0 : 255;
  }
  return { width, height, levels };
}

/** Length of a file's head, bytes, then width and height, pixels. */
function headOf(file: Buffer, form: RegExp): readonly [number, number, number] {
  const found = form.exec(file.subarray(0, 64).toString('latin1'));
  if (!found) throw new Error('not the picture that was asked of pdftoppm');
  return [found[0].length, Number(found[1]), Number(found[2])];
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
