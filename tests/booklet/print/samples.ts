import { picturePlace } from '../../../src/booklet/print/index.ts';
import type { PrintDocument, PrintPicture } from '../../../src/booklet/print/index.ts';

/** Pictures of 150 × 80 mm; each has an arrowhead of its own grey under the same id, a dash-dot-dot line and a measure. */
export function samplePictures(count: number): readonly PrintPicture[] {
  return Array.from({ length: count }, (_, index) => ({
    id: `step-${index + 1}`,
    width: 150,
    height: 80,
    svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 150 80"><defs><marker id="head" viewBox="0 0 4 4" refX="2" refY="2" markerWidth="4" markerHeight="4">`
      + `<path d="M0 0L4 2L0 4Z" fill="rgb(${index},${index},${index})"/></marker></defs>`
      + `<rect x="1" y="1" width="148" height="78" fill="none" stroke="#000" stroke-width="0.5"/>`
      + `<path d="M25 40H125" stroke="#000" stroke-width="2" marker-end="url(#head)"/>`
      + `<text x="75" y="30" font-size="8" font-family="Noto Sans" text-anchor="middle">${index + 1} × 637 mm</text>`
      + `<path d="M20 60h100" stroke="#000" stroke-width=".25" stroke-dasharray="6 1 1 1 1 1"/></svg>`,
  }));
}

export function place(index: number, alt: string): string {
  return picturePlace({ id: `step-${index + 1}`, width: 150, height: 80, alt });
}

const CSS = '@page { margin: 15mm } h1 { font-size: 24pt } section { break-after: page }';

/** English: a heading, a picture, a table with headers (whose ids Chromium counts) on each page. */
export function englishBooklet(steps: number): PrintDocument {
  const section = (index: number): string => `<section><h1>Step ${index + 1}</h1>${place(index, `Deck ${index + 1} under the frame`)}`
    + '<h2>Check</h2><p>Measure 637 × 18 mm. <b>Hold</b> the edge.</p><ul><li>one</li></ul>'
    + '<table><tr><th>Part</th><th>Count</th></tr><tr><td>Pin</td><td>12</td></tr></table></section>';
  return {
    id: 'rack-en', lang: 'en', dir: 'ltr', title: 'Shelf rack', subject: 'Assembly', paper: 'a4', contentMark: 'mark-1', css: CSS,
    html: Array.from({ length: steps }, (_, index) => section(index)).join(''),
  };
}

export function arabicBooklet(steps: number): PrintDocument {
  const section = (index: number): string => `<section><h1>الخطوة ${index + 1}</h1>${place(index, 'اللوح تحت الإطار')}`
    + '<h2>تحقق</h2><p>القياس <span dir="ltr">637 × 18 mm</span> <b>أمسك</b> الحافة.</p></section>';
  return {
    id: 'rack-ar', lang: 'ar', dir: 'rtl', title: 'رف', paper: 'a4', contentMark: 'mark-1', css: CSS,
    html: Array.from({ length: steps }, (_, index) => section(index)).join(''),
  };
}

/** A drawing of about the weight of a step's: `lines` short strokes, the same on every run. */
export function heavyPicture(id: string, lines: number): PrintPicture {
  let seed = 7 + id.length;
  const next = (range: number): string => {
    seed = (seed * 1103515245 + 12345) % 2147483648;
    return ((seed / 2147483648) * range).toFixed(2);
  };
  const d = Array.from({ length: lines }, () => `M${next(148)} ${next(98)}l${next(6)} ${next(6)} ${next(6)} ${next(6)}`).join('');
  return { id, width: 160, height: 110, svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 160 110"><path d="${d}" fill="none" stroke="#000" stroke-width="0.25"/></svg>` };
}
