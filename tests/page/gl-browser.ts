import { linkSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename, dirname, join } from 'node:path';
import { brotliDecompressSync } from 'node:zlib';
import puppeteer, { type Browser } from 'puppeteer';
import { chooseBrowser } from '../../src/booklet/print/chooseBrowser.ts';
import { readTar } from '../../src/booklet/print/readTar.ts';
import { SLOWEST } from '../support/waiting.ts';

export interface GlBrowser {
  readonly browser: Browser;
  close(): Promise<void>;
}

/** Graphics by the processor alone, so that the model is drawn on machines without a graphics card too. */
const SOFTWARE_GL = ['--use-gl=angle', '--use-angle=swiftshader', '--enable-unsafe-swiftshader', '--ignore-gpu-blocklist'];

/** The browser that prints, started so that it draws in three dimensions. */
export async function openGlBrowser(): Promise<GlBrowser> {
  const { path, how, args, env } = await chooseBrowser();
  const beside = how === 'packaged' ? withSoftwareGl(path) : null;
  const browser = await puppeteer.launch({
    executablePath: beside === null ? path : join(beside, basename(path)), headless: 'shell', env, timeout: SLOWEST, protocolTimeout: SLOWEST,
    args: [...args.filter((arg) => arg !== '--disable-gpu'), ...SOFTWARE_GL],
  });
  return {
    browser,
    close: async () => {
      await browser.close();
      if (beside !== null) rmSync(beside, { recursive: true, force: true });
    },
  };
}

/** The packaged browser carries its software graphics in a parcel of their own, and looks for them beside its program. */
function withSoftwareGl(program: string): string {
  const folder = mkdtempSync(join(dirname(dirname(program)), 'gl-'));
  linkSync(program, join(folder, basename(program)));
  const parcels = join(dirname(dirname(dirname(createRequire(import.meta.url).resolve('@sparticuz/chromium')))), 'bin');
  for (const { name, bytes } of readTar(brotliDecompressSync(readFileSync(join(parcels, 'swiftshader.tar.br'))))) {
    writeFileSync(join(folder, basename(name)), bytes, { mode: 0o755 });
  }
  return folder;
}
