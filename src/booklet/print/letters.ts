import { PDFDict, PDFName } from 'pdf-lib';
import type { PDFPage } from 'pdf-lib';
import { showsMissingGlyph } from './pageContent.ts';
import type { PageContent } from './operators.ts';

/** The PostScript names of our fonts as a browser writes them into a PDF: subset tag, family, weight. */
const OUR_FONT = /^[A-Z]{6}\+Noto(Sans(Arabic|Bengali|Ethiopic|Myanmar)?|NastaliqUrdu)-(Regular|Bold)$/;

/**
 * Refuses a page with a letter that our fonts do not have: it is set in another face, drawn as a
 * picture of a letter (a Type 3 font), or left out for an empty box.
 * @param where what the page belongs to, for the message.
 */
export function refuseForeignLetters(page: PDFPage, content: PageContent, where: string): void {
  for (const name of fontNames(page)) {
    if (!OUR_FONT.test(name)) throw new Error(`${where}: some letters are in none of the fonts and fell to ${name}; use letters that Noto Sans has, regular or bold and not slanted, or add the script's font`);
  }
  if (showsMissingGlyph(content)) {
    throw new Error(`${where}: some letters are in none of the fonts and would print as empty boxes; use others, or add the script's font`);
  }
}

/** Base names of a page's fonts; a Type 3 font has none. */
function fontNames(page: PDFPage): readonly string[] {
  const resources = page.node.lookup(PDFName.of('Resources'), PDFDict);
  const fonts = resources.lookupMaybe(PDFName.of('Font'), PDFDict);
  return (fonts?.values() ?? []).map((value) => {
    const font = page.doc.context.lookup(value, PDFDict);
    return font.lookupMaybe(PDFName.of('BaseFont'), PDFName)?.decodeText() ?? 'a made-up face';
  });
}
