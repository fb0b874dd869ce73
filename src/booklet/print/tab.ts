/// <reference lib="dom.iterable" />
import type { Page } from 'puppeteer';
import { fontCss, langRule } from './fonts.ts';
import { PAPERS } from '../papers/index.ts';
import { SEPARATOR } from './place.ts';
import type { PicturePages } from './picturePages.ts';
import type { PrintDocument, Shown } from './types.ts';

/** Nothing is fetched and no script of a document runs: all it needs is inside. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'; font-src data:; img-src data:";

/** Turns a fresh tab into one that has all fonts loaded and an empty body. */
export async function prepareTab(tab: Page, langs: readonly string[]): Promise<void> {
  await tab.setContent('<!doctype html><html><head>'
    + `<meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="${POLICY}"><title></title>`
    + `<style>${fontCss(langs)}</style><style id="sheet"></style></head><body></body></html>`);
  await tab.emulateMediaType('print');
  // Compilers that keep function names wrap the functions we send into the tab in a call of `__name`.
  await tab.evaluate('globalThis.__name = (named) => named');
  await tab.evaluate(async () => {
    const faces = await Promise.all([...document.fonts].map((face) => face.load()));
    if (faces.length === 0) throw new Error('the tab has no fonts');
  });
}

/** Puts a document into the tab. `langs` are the tab's. */
export async function showDocument(tab: Page, doc: PrintDocument, langs: readonly string[]): Promise<Shown> {
  return tab.evaluate(async ({ lang, dir, title, css, html, separator }) => {
    Object.assign(document.documentElement, { lang, dir });
    document.title = title;
    const sheet = document.getElementById('sheet');
    if (sheet) sheet.textContent = css;
    document.body.innerHTML = html;
    await document.fonts.ready;
    const headings = [...document.querySelectorAll('h1, h2, h3, h4, h5, h6')].map((heading) => said(heading).replace(/\s+/g, ' ').trim());
    const sheets = [...document.querySelectorAll<HTMLElement>('[data-page]')].map((sheet) => ({ page: sheet.dataset['page'] ?? '', frame: frameOf(sheet) }));
    const tooWide = sheets.map(({ page, frame }) => ({ page, by: frame.scrollWidth - frame.clientWidth })).filter(({ by }) => by > 1);
    return { tooWide, places: document.querySelectorAll('[data-place]').length, headings: headings.filter((heading) => heading !== ''), texts: texts() };

    /** What stands in the body alone has no frame round it; the body itself is as wide as the tab, not as the paper. */
    function frameOf(sheet: HTMLElement): HTMLElement {
      return sheet.parentElement === null || sheet.parentElement === document.body ? sheet : sheet.parentElement;
    }

    /** Every text that is laid out, but for what stands in drawings or is hidden from those who hear the page. */
    function texts(): { text: string; lang: string }[] {
      const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
      const range = document.createRange();
      const found: { text: string; lang: string }[] = [];
      for (let node = walker.nextNode(); node; node = walker.nextNode()) {
        const element = node.parentElement;
        range.selectNodeContents(node);
        if (!element || element.closest('svg, [role=img], [aria-hidden=true]') || range.getClientRects().length === 0) continue;
        if (getComputedStyle(element).visibility !== 'visible') continue;
        found.push({ text: (node.textContent ?? '').replace(/[\n\t ]+/g, ' '), lang: element.closest('[lang]')?.getAttribute('lang') ?? lang });
      }
      return found;
    }

    /** Letters in their logical order, pictures by their words; marks of direction (UAX #9) are for running text only. */
    function said(node: Node): string {
      if (node instanceof Element && node.hasAttribute('aria-label')) return plain(node.getAttribute('aria-label')?.split(separator).at(-1) ?? '');
      return node instanceof Element ? [...node.childNodes].map(said).join('') : plain(node.textContent ?? '');
    }
    function plain(text: string): string {
      return text.replace(/[\u2066-\u2069]/g, '');
    }
  }, { lang: doc.lang, dir: doc.dir, title: doc.title, css: `${langRules(doc, langs)}\n${sheetCss(doc)}\n${doc.css}`, html: doc.html, separator: SEPARATOR });
}

/** The font of the document's language and of every language that a text in it is marked with. */
function langRules({ lang, html }: PrintDocument, loaded: readonly string[]): string {
  const marked = [...html.matchAll(/ lang="([^"]+)"/g)].map((match) => match[1] ?? lang);
  return [...new Set([lang, ...marked.sort()])].map((each) => langRule(each, loaded)).join('\n');
}

/** What every document starts from; its own style comes after and may set margins by `@page`. */
function sheetCss({ paper, field }: PrintDocument): string {
  return `@page { size: ${field ? `${field.width}mm ${field.height}mm` : PAPERS[paper].css}; margin: 12mm }
html, body { margin: 0; padding: 0; color: #000 }
.picture-place { display: block }
body > :last-child { break-after: auto !important }`;
}

/** Puts pictures into the tab, each on a page of its own. */
export async function showPictures(tab: Page, { css, shadows }: PicturePages): Promise<void> {
  await tab.evaluate(async (style, trees) => {
    Object.assign(document.documentElement, { lang: 'zxx', dir: 'ltr' });
    document.title = '';
    const sheet = document.getElementById('sheet');
    if (sheet) sheet.textContent = style;
    document.body.replaceChildren(...trees.map((tree, index) => {
      const page = document.createElement('div');
      page.id = `picture${index}`;
      page.attachShadow({ mode: 'open' }).innerHTML = tree;
      return page;
    }));
    await document.fonts.ready;
  }, `html, body { margin: 0; padding: 0 }\n${css}`, shadows);
}

/** What the tab holds, as PDF: words are tagged and have an outline, pictures are bare. */
export async function printTab(tab: Page, what: 'words' | 'pictures', timeout: number): Promise<Uint8Array> {
  const tagged = what === 'words';
  return tab.pdf({ preferCSSPageSize: true, printBackground: true, tagged, outline: tagged, timeout });
}
