import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Whether poppler's tools are here; tests that use them as a second reader are shown as skipped where they are not. */
export const hasPoppler = ['pdffonts', 'pdfimages', 'pdftoppm'].every((tool) => spawnSync(tool, ['-v']).error === undefined);

export function poppler(tool: 'pdffonts' | 'pdfimages', bytes: Uint8Array): string {
  return withFile(bytes, (file) => execFileSync(tool, tool === 'pdfimages' ? ['-list', file] : [file], { encoding: 'utf8' }));
}

export interface GreyPage { readonly width: number; readonly height: number; readonly pixels: Uint8Array }

/** The first page as grey pixels (PGM, one byte each). */
export function renderPage(bytes: Uint8Array, dotsPerInch: number): GreyPage {
  return withFile(bytes, (file) => {
    execFileSync('pdftoppm', ['-r', String(dotsPerInch), '-gray', '-f', '1', '-l', '1', '-singlefile', file, file]);
    const pgm = readFileSync(`${file}.pgm`);
    const [head = '', width, height] = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(pgm.subarray(0, 40).toString('latin1')) ?? [];
    return { width: Number(width), height: Number(height), pixels: pgm.subarray(head.length) };
  });
}

function withFile<T>(bytes: Uint8Array, read: (file: string) => T): T {
  const folder = mkdtempSync(join(tmpdir(), 'print-test-'));
  try {
    const file = join(folder, 'page.pdf');
    writeFileSync(file, bytes);
    return read(file);
  } finally {
    rmSync(folder, { recursive: true });
  }
}
