import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openPrinter, picturePlace } from '../../../src/booklet/print/index.ts';
import type { PageFault, PrintDocument, Printer } from '../../../src/booklet/print/index.ts';
import { arabicBooklet, englishBooklet } from './samples.ts';

let printer: Printer;
beforeAll(async () => { printer = await openPrinter(); });
afterAll(() => printer.close());

const measure = (html: string, css = '', more: Partial<PrintDocument> = {}): Promise<readonly PageFault[]> => printer.measure({
  id: 'm', lang: 'en', dir: 'ltr', title: 'M', paper: 'a4', contentMark: 'm', css, html, ...more,
});
const SHEET = '@page { margin: 0 } .sheet { width: 210mm; height: 297mm; box-sizing: border-box; padding: 20mm; position: relative }';
const at = (style: string, text: string): string => `<div class="sheet" data-page><p style="position:absolute;margin:0;white-space:nowrap;line-height:5mm;${style}">${text}</p></div>`;

describe('measuring a document', () => {
  it('finds nothing wrong with sound pages, left to right and right to left', async () => {
    expect(await printer.measure(englishBooklet(2))).toEqual([]);
    expect(await printer.measure(arabicBooklet(2))).toEqual([]);
    expect(await measure(at('left:20mm;top:20mm', 'Step'), SHEET)).toEqual([]);
  });

  it('lets tall letters reach out of a tight line, but not into a cut', async () => {
    const tight = (overflow: string): string => `<p style="line-height:1;width:30mm;overflow:${overflow}">Égjpq two lines of text</p>`;
    expect(await measure(tight('visible'))).toEqual([]);
    expect(await measure(tight('hidden'))).toMatchObject([{ kind: 'clipped' }]);
  });

  it('finds text wider or taller than its box, hidden or not, and says by how much', async () => {
    const wide = await measure('<p class="name" style="width:20mm;white-space:nowrap;overflow:hidden"><span style="display:inline-block;width:50mm">long word</span></p>');
    expect(wide).toMatchObject([{ kind: 'clipped', at: 'p.name', text: 'long word' }]);
    expect((wide[0] as { by: number }).by).toBeCloseTo(30, 0);
    const tall = await measure('<div style="height:10mm;line-height:8mm"><div>a</div><div>b</div></div>');
    expect(tall).toMatchObject([{ kind: 'clipped', at: 'div', by: expect.closeTo(6, 0) as number }]);
  });

  it.each([['left', 'left:15mm;top:30mm'], ['right', 'right:15mm;top:30mm'], ['top', 'left:30mm;top:15mm'], ['bottom', 'left:30mm;bottom:15mm']])(
    'finds text that sticks out of its sheet’s content box at the %s by 5 mm', async (_side, style) => {
      const faults = await measure(at(style, 'Step'), SHEET);
      expect(faults).toMatchObject([{ kind: 'outside', text: 'Step' }]);
      expect(Math.abs((faults[0] as { by: number }).by - 5)).toBeLessThan(0.3);
    });

  it('finds a picture that is wider than the page leaves room for', async () => {
    const html = picturePlace({ id: 'a', width: 200, height: 10, alt: 'wide' });
    // A4 less 2 × 15 mm leaves 180 mm.
    expect(await measure(html, '@page { margin: 15mm }')).toMatchObject([{ kind: 'outside', by: expect.closeTo(20, 0) as number }]);
    expect(await measure(html, '@page { margin: 5mm }')).toEqual([]);
  });

  it('finds letters that stand on those of the next line, and lets boxes meet whose letters do not', async () => {
    const urdu = (lines: number): Promise<readonly PageFault[]> => measure(`<p style="line-height:${lines};width:60mm">شروع کرنے سے پہلے پورا کتابچہ پڑھیں اور اسے سنبھال کر رکھیں۔</p>`, '', { lang: 'ur', dir: 'rtl' });
    const tight = await urdu(1.2);
    expect(tight.filter(({ kind }) => kind === 'overlap').length).toBeGreaterThan(0);
    expect((await urdu(2.5)).filter(({ kind }) => kind === 'overlap')).toEqual([]);
    // The foot of the p hangs at one end of the first line, the T stands up at the other end of the second.
    const diagonal = '<p style="line-height:0.8;width:40mm;font-size:40px">aaaap Taaaa</p>';
    expect(await measure(diagonal)).toEqual([]);
    expect(await measure(diagonal.replace('Taaaa', 'aaaaT'))).toMatchObject([{ kind: 'overlap', text: 'aaaap | aaaaT' }]);
  });

  it('finds a word on a picture', async () => {
    const html = `<div style="position:relative">${picturePlace({ id: 'a', width: 60, height: 40, alt: 'a' })}<p style="position:absolute;top:10mm;left:10mm;margin:0">word</p></div>`;
    expect(await measure(html)).toMatchObject([{ kind: 'overlap', text: 'word | a picture' }]);
  });

  it('finds letters that no font has', async () => {
    expect(await measure('<p>Good</p><p class="bad">a 漢字</p>')).toContainEqual({ kind: 'face', at: 'p.bad', text: '漢字', face: 'none' });
  });
});
