import { PDFArray, PDFDict, PDFName, PDFObjectCopier, PDFRawStream } from 'pdf-lib';
import type { PDFDocument, PDFRef } from 'pdf-lib';
import { BLEED_PIXELS } from './picturePages.ts';
import { PIXELS_PER_MM, POINTS_PER_MM } from './units.ts';
import { rawContent } from './pageStream.ts';
import { openPdf } from './pdfFile.ts';
import type { PictureBook } from './types.ts';

/** A book opened for copying: the same opened book serves all documents. */
export type OpenedBook = ReadonlyMap<string, OpenedPicture>;

interface OpenedPicture {
  readonly pdf: PDFDocument;
  readonly sheet: number;
  readonly page: number;
  readonly width: number;
  readonly height: number;
}

/** A picture inside a document: a form XObject in points, y upwards; the picture's corner is inset by the bleed. */
export interface PictureForm {
  readonly ref: PDFRef;
  readonly width: number;
  readonly height: number;
  /** Height of the form, points. */
  readonly formHeight: number;
}

export async function openBook(book: PictureBook): Promise<OpenedBook> {
  const opened = new Map<string, OpenedPicture>();
  for (const [sheet, { pdf: bytes, pictures }] of book.sheets.entries()) {
    const pdf = await openPdf(bytes);
    pictures.forEach(({ id, width, height }, page) => opened.set(id, { pdf, sheet, page, width, height }));
  }
  return opened;
}

/** Gives a picture's form in `target`; each picture, and each font of a sheet, is copied once. */
export function pictureForms(target: PDFDocument, book: OpenedBook): (id: string) => PictureForm {
  const forms = new Map<string, PictureForm>();
  const copiers = new Map<number, PDFObjectCopier>();
  return (id) => {
    const picture = book.get(id);
    if (!picture) throw new Error(`picture “${id}” is not in the picture book; it holds ${[...book.keys()].join(', ') || 'none'}`);
    const copier = copiers.get(picture.sheet) ?? PDFObjectCopier.for(picture.pdf.context, target.context);
    copiers.set(picture.sheet, copier);
    const form = forms.get(id) ?? copyForm(target, picture, copier);
    forms.set(id, form);
    return form;
  };
}

function copyForm(target: PDFDocument, picture: OpenedPicture, copier: PDFObjectCopier): PictureForm {
  const page = picture.pdf.getPage(picture.page);
  const { width, height } = page.getSize();
  const resources = copier.copy(page.node.lookup(PDFName.of('Resources'), PDFDict));
  retagFonts(resources, picture.sheet);
  const dict = target.context.obj({ Type: 'XObject', Subtype: 'Form', BBox: [0, 0, width, height], Filter: 'FlateDecode' });
  dict.set(PDFName.of('Resources'), resources);
  const ref = target.context.register(PDFRawStream.of(dict, rawContent(page).getContents()));
  return { ref, width: picture.width, height: picture.height, formHeight: height };
}

/** A place whose unit is this near a millimetre of paper was only rounded by the browser, not scaled on purpose. */
const ROUNDING = 0.005;

/**
 * Operators that draw a form with its picture's corner at (0, 0) of a place whose unit is 1 mm, y downwards.
 * @param scale 1 for true size.
 * @param pointsPerUnit what the place's unit came to on the page; rounding is made good.
 */
export function drawForm(name: string, state: string, form: PictureForm, scale: number, pointsPerUnit: number): string {
  const rounded = pointsPerUnit / POINTS_PER_MM;
  const made = Math.abs(rounded - 1) < ROUNDING ? scale / rounded : scale;
  const unit = made / POINTS_PER_MM;
  const bleed = (BLEED_PIXELS / PIXELS_PER_MM) * made;
  const matrix = [unit, 0, 0, -unit, -bleed, form.formHeight * unit - bleed];
  return `q ${matrix.map((number) => Number(number.toFixed(6))).join(' ')} cm 0 g 0 G /${state} gs /${name} Do Q`;
}

/**
 * Two subsets of one font in one file must bear different tags (ISO 32000-1, 9.6.4), and the words'
 * own subsets are counted AAAAAA, BAAAAA … too: the pictures' get X and a letter for their sheet.
 */
function retagFonts(resources: PDFDict, sheet: number): void {
  const tag = `X${String.fromCharCode(65 + (sheet % 26))}`;
  const fonts = resources.lookupMaybe(PDFName.of('Font'), PDFDict);
  for (const [, value] of fonts?.entries() ?? []) {
    const font = resources.context.lookup(value, PDFDict);
    retag(font, 'BaseFont', tag);
    const descendants = font.lookupMaybe(PDFName.of('DescendantFonts'), PDFArray);
    const descendant = descendants?.lookup(0, PDFDict);
    if (!descendant) continue;
    retag(descendant, 'BaseFont', tag);
    retag(descendant.lookup(PDFName.of('FontDescriptor'), PDFDict), 'FontName', tag);
  }
}

function retag(dict: PDFDict, key: string, tag: string): void {
  const name = dict.lookup(PDFName.of(key));
  if (!(name instanceof PDFName)) return;
  const [, letters = '', rest = ''] = /^([A-Z]{6})\+(.*)$/.exec(name.decodeText()) ?? [];
  if (letters !== '' && !letters.startsWith(tag)) dict.set(PDFName.of(key), PDFName.of(`${tag}${letters.slice(0, 4)}+${rest}`));
}
