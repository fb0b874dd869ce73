/// <reference lib="dom.iterable" />
import type { Page } from 'puppeteer';
import { foreignFaces } from './foreignFaces.ts';
import { inkOverlapsInPage } from './inkOverlaps.ts';
import { PAPERS } from '../papers/index.ts';
import { PIXELS_PER_MM } from './units.ts';
import type { PageFault, PrintDocument } from './types.ts';

/** Half a CSS pixel and a bit: what rounding to whole pixels may do (scrollWidth is a whole number). */
const TOLERANCE_PIXELS = 1;

/**
 * Looks at a shown document for text that paper would not show whole.
 * An element with `data-page` is one sheet (its content box, that is without its padding, is where
 * text and pictures may stand). A document without such elements is measured across only, at the
 * width that `@page` leaves it: where its pages break is known only when it is printed.
 * @param covered whether our fonts have a code point.
 */
export async function measureTab(tab: Page, doc: PrintDocument, covered: (codePoint: number) => boolean): Promise<readonly PageFault[]> {
  await tab.setViewport({ width: Math.floor(await contentWidth(tab, doc)), height: 1000 });
  const faults = [...await tab.evaluate(faultsInPage, TOLERANCE_PIXELS), ...await tab.evaluate(inkOverlapsInPage, TOLERANCE_PIXELS)];
  const inMm = faults.map(({ kind, at, text, by }) => ({ kind, at, text, by: Math.round((by / PIXELS_PER_MM) * 100) / 100 }));
  return [...inMm, ...await foreignFaces(tab, covered)];
}

/** Width between the page's margins, CSS pixels, by the last `@page` rule without a name that says so. */
async function contentWidth(tab: Page, doc: PrintDocument): Promise<number> {
  const full = (doc.field ?? PAPERS[doc.paper]).width * PIXELS_PER_MM;
  const margins = await tab.evaluate(() => {
    const probe = document.createElement('div');
    const pages = [...document.styleSheets].flatMap((sheet) => [...sheet.cssRules]).filter((rule) => rule instanceof CSSPageRule);
    for (const rule of pages) {
      if (rule.selectorText !== '') continue;
      for (const side of ['margin-left', 'margin-right']) {
        const value = rule.style.getPropertyValue(side);
        if (value !== '') probe.style.setProperty(side, value);
      }
    }
    document.body.append(probe);
    const { marginLeft, marginRight } = getComputedStyle(probe);
    probe.remove();
    return parseFloat(marginLeft) + parseFloat(marginRight);
  });
  return full - margins;
}

interface PixelFault { readonly kind: 'clipped' | 'outside'; readonly at: string; readonly text: string; readonly by: number }

/** Runs inside the tab: it may use nothing from outside itself. */
function faultsInPage(tolerance: number): PixelFault[] {
  const faults: PixelFault[] = [];
  for (const element of document.body.querySelectorAll<HTMLElement>('*')) {
    if (element instanceof SVGElement && !element.classList.contains('picture-place')) continue;
    if (element instanceof HTMLElement) report('clipped', element, overflow(element));
    if (textNodes(element).length > 0 || element instanceof SVGElement) report('outside', element, overhang(element));
  }
  return faults;

  function report(kind: PixelFault['kind'], element: Element, by: number): void {
    if (by > tolerance) faults.push({ kind, at: path(element), text: words(element), by });
  }

  function overflow(element: HTMLElement): number {
    if (element.clientWidth === 0 || !element.textContent?.trim()) return 0;
    const down = element.scrollHeight - element.clientHeight;
    const shown = getComputedStyle(element).overflowY === 'visible' && down > tolerance;
    return Math.max(element.scrollWidth - element.clientWidth, shown ? down - deepestSpare(element) : down);
  }

  /** Where nothing is cut off, a face that is taller than its line may reach out below: that is no fault. */
  function deepestSpare(element: Element): number {
    return Math.max(0, ...[element, ...element.querySelectorAll('*')].map((each) => spareOf(each)));
  }

  /** How far the face's box reaches out of its line, above and below alike. */
  function spareOf(element: Element): number {
    const [node] = textNodes(element);
    if (!node) return 0;
    const range = document.createRange();
    range.selectNodeContents(node);
    const height = range.getClientRects()[0]?.height ?? 0;
    return Math.max(0, height - parseFloat(getComputedStyle(element).lineHeight)) / 2 || 0;
  }

  function overhang(element: Element): number {
    const sheet = element.closest('[data-page]');
    const room = contentBox(sheet ?? document.body);
    const boxes = element instanceof SVGElement ? [element.getBoundingClientRect()] : textBoxes(element);
    const sideways = boxes.map((box) => Math.max(room.left - box.left, box.right - room.right));
    const upright = sheet ? boxes.map((box) => Math.max(room.top - box.top, box.bottom - room.bottom)) : [];
    return Math.max(0, ...sideways, ...upright);
  }

  /** Boxes of lines; a face's own box may be taller than the line, but its letters are not. */
  function textBoxes(element: Element): readonly { left: number; right: number; top: number; bottom: number }[] {
    const spare = spareOf(element);
    return textNodes(element).flatMap((node) => {
      const range = document.createRange();
      range.selectNodeContents(node);
      return [...range.getClientRects()].map(({ left, right, top, bottom }) => ({ left, right, top: top + spare, bottom: bottom - spare }));
    });
  }

  function contentBox(element: Element): { left: number; right: number; top: number; bottom: number } {
    const box = element.getBoundingClientRect();
    const style = getComputedStyle(element);
    const inset = (side: string): number => parseFloat(style.getPropertyValue(`padding-${side}`)) + parseFloat(style.getPropertyValue(`border-${side}-width`));
    return {
      left: box.left + inset('left'), right: box.right - inset('right'),
      top: box.top + inset('top'), bottom: box.bottom - inset('bottom'),
    };
  }

  function textNodes(element: Element): readonly Node[] {
    return [...element.childNodes].filter((node) => node.nodeType === Node.TEXT_NODE && node.textContent?.trim());
  }

  function words(element: Element): string {
    const text = element instanceof SVGElement ? element.getAttribute('aria-label') : element.textContent;
    return (text ?? '').replace(/\s+/g, ' ').trim().slice(0, 80);
  }

  function path(element: Element): string {
    const names: string[] = [];
    for (let at: Element | null = element; at && at !== document.body; at = at.parentElement) {
      names.unshift(at.localName + (at.id ? `#${at.id}` : '') + [...at.classList].map((name) => `.${name}`).join(''));
    }
    return names.join(' > ');
  }
}
