/**
 * Makes a contact sheet of all pictograms for the eye: `npx tsx tests/draw/pictograms/contact-sheet.ts <folder>`
 * writes colour.png and grey.png (big pictures) and small.png (8 mm and 12 mm, 192 dots an inch).
 */
import { writeFileSync } from 'node:fs';
import chromium from '@sparticuz/chromium';
import puppeteer, { type Page } from 'puppeteer';
import { pictogram, pictogramNames, type PictogramName } from '../../../src/draw/pictograms/index.ts';

const picture = (name: PictogramName, height: string): string => {
  const { svg, width } = pictogram(name);
  return `<svg viewBox="0 0 ${width} 48" style="height:${height}">${svg}</svg>`;
};

const cell = (content: string, label: string): string => `<figure>${content}<figcaption>${label}</figcaption></figure>`;

const sheet = (names: readonly PictogramName[], heights: readonly string[], labels: boolean, grey: boolean): string =>
  `<style>body{margin:10px;background:#fff;font:11px sans-serif;${grey ? 'filter:grayscale(1);' : ''}}
   main{display:flex;flex-wrap:wrap;gap:12px}figure{margin:0;text-align:center}svg{margin:3px}</style><main>${
    names.map((name, i) => cell(heights.map((height) => picture(name, height)).join(''), labels ? name : String(i + 1))).join('')}</main>`;

const shoot = async (page: Page, html: string, scale: number, file: string): Promise<void> => {
  await page.setViewport({ width: Math.round(scale > 1 ? 1600 / scale : 1200), height: 100, deviceScaleFactor: scale });
  await page.setContent(html);
  writeFileSync(file, await page.screenshot({ fullPage: true }));
};

const [, , folder = '/tmp', only = ''] = process.argv;
const wanted = pictogramNames.filter((name) => only === '' || only.split(',').some((part) => name.startsWith(part)));
const browser = await puppeteer.launch({
  executablePath: await chromium.executablePath(),
  headless: 'shell',
  args: ['--no-sandbox', '--disable-dev-shm-usage', '--font-render-hinting=none', '--disable-gpu'],
});
const page = await browser.newPage();
await shoot(page, sheet(wanted, ['96px'], true, false), 1, `${folder}/colour.png`);
await shoot(page, sheet(wanted, ['96px'], false, true), 1, `${folder}/grey.png`);
await shoot(page, sheet(wanted, ['8mm', '12mm'], false, true), 2, `${folder}/small.png`);
await browser.close();
