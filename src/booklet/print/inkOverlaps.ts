/// <reference lib="dom.iterable" />

/** A word whose letters stand on another's or on a picture; `by` in CSS pixels. */
export interface InkFault {
  readonly kind: 'overlap';
  readonly at: string;
  readonly text: string;
  readonly by: number;
}

/**
 * Finds letters that stand on others. A script's letters may reach far out of the line that its style gives them;
 * where each word's ink begins and ends is asked of the browser's own shaping, word by word, and where two words'
 * boxes meet both are drawn to see whether their ink does.
 * Runs inside the tab: it may use nothing from outside itself.
 * @param tolerance overlap of boxes that is let pass, CSS pixels.
 */
export function inkOverlapsInPage(tolerance: number): InkFault[] {
  interface Box { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number }
  interface Word extends Box { readonly element: Element; readonly text: string; readonly base: number }
  /** How finely two words are drawn, dots to the CSS pixel, and how dark a dot counts as ink, of 255. */
  const fineness = 4;
  const inked = 128;
  const pen = newPen(1, 1);
  const sheets = [...document.querySelectorAll('[data-page]')].map((sheet) => sheet.parentElement ?? sheet);
  return (sheets.length > 0 ? sheets : [document.body]).flatMap(faultsOn);

  function faultsOn(sheet: Element): InkFault[] {
    const words = wordsIn(sheet).sort((a, b) => a.top - b.top);
    const pictures = [...sheet.querySelectorAll('.picture-place')].map((place) => place.getBoundingClientRect());
    return words.flatMap((word, index) => {
      const later = words.slice(index + 1);
      const end = later.findIndex((other) => other.top >= word.bottom);
      const others = (end < 0 ? later : later.slice(0, end)).filter((other) => overlap(word, other) > tolerance && inkMeets(word, other));
      return [
        ...pictures.filter((picture) => overlap(word, picture) > tolerance).map((picture) => fault(word, 'a picture', overlap(word, picture))),
        ...others.map((other) => fault(word, other.text, overlap(word, other))),
      ];
    });
  }

  function fault(word: Word, other: string, by: number): InkFault {
    return { kind: 'overlap', at: [word.element.closest('[class]')?.className ?? '', word.element.localName].join(' > '), text: `${word.text} | ${other}`, by };
  }

  /** How deep two boxes stand in one another. */
  function overlap(a: Box, b: Box): number {
    return Math.min(a.right - b.left, b.right - a.left, a.bottom - b.top, b.bottom - a.top);
  }

  function wordsIn(sheet: Element): Word[] {
    const walker = document.createTreeWalker(sheet, NodeFilter.SHOW_TEXT);
    const found: Word[] = [];
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const element = node.parentElement;
      if (element && !element.closest('svg')) found.push(...wordsOf(node, element));
    }
    return found;
  }

  function wordsOf(node: Node, element: Element): Word[] {
    const range = document.createRange();
    return [...(node.textContent ?? '').matchAll(/[^\s\u00a0]+/g)].flatMap((match) => {
      range.setStart(node, match.index);
      range.setEnd(node, match.index + match[0].length);
      const [box, ...more] = range.getClientRects();
      // A word that is broken over lines has no one box.
      if (!box || box.width === 0 || more.length > 0) return [];
      dress(pen, element);
      const { actualBoundingBoxAscent: over, actualBoundingBoxDescent: under, fontBoundingBoxAscent: ascent } = pen.measureText(match[0]);
      const base = box.top + Math.round(ascent);
      return [{ element, text: match[0], base, left: box.left, right: box.right, top: base - over, bottom: base + under }];
    });
  }

  /** The shorthand of the style's font is empty where kerning is set: its parts are put together. */
  function dress(canvas: CanvasRenderingContext2D, element: Element): void {
    const { fontWeight, fontSize, fontFamily, direction } = getComputedStyle(element);
    canvas.font = `${fontWeight} ${fontSize} ${fontFamily}`;
    canvas.direction = direction === 'rtl' ? 'rtl' : 'ltr';
    canvas.textAlign = 'left';
  }

  /** Draws the part where two words' boxes meet: first one word, then of the other only what falls on it. */
  function inkMeets(a: Word, b: Word): boolean {
    const [left, top] = [Math.max(a.left, b.left), Math.max(a.top, b.top)];
    const [width, height] = [Math.min(a.right, b.right) - left, Math.min(a.bottom, b.bottom) - top].map((side) => Math.ceil(side * fineness));
    const both = newPen(width ?? 1, height ?? 1);
    both.setTransform(fineness, 0, 0, fineness, -left * fineness, -top * fineness);
    for (const [word, rule] of [[a, 'source-over'], [b, 'source-in']] as const) {
      dress(both, word.element);
      both.globalCompositeOperation = rule;
      both.fillText(word.text, word.left, word.base);
    }
    const dots = both.getImageData(0, 0, both.canvas.width, both.canvas.height).data;
    return dots.some((value, index) => index % 4 === 3 && value > inked);
  }

  function newPen(width: number, height: number): CanvasRenderingContext2D {
    const canvas = document.createElement('canvas');
    Object.assign(canvas, { width: Math.max(1, width), height: Math.max(1, height) });
    const context = canvas.getContext('2d', { willReadFrequently: true });
    if (!context) throw new Error('the tab cannot measure letters');
    return context;
  }
}
