import { declaredFor } from '../../read/index.ts';
import { bookletPages, glyphsFrom, laidFor, languagesIn, loadWords, pictureSizes, PUBLICATIONS, readAbout, type PlacePicture } from '../../booklet/index.ts';
import { checkModel } from '../../check/index.ts';
import { planTubes } from '../../cut/index.ts';
import * as drawing from '../../draw/index.ts';
import { buildModel, loadSolids } from '../../model/index.ts';
import { planItem } from '../../plan/index.ts';
import type { PrinterAnswer, PrinterOrder } from './workers/messages.ts';
import { breath } from './workers/newest.ts';
import { itemOf, orFaulty } from './workers/subject.ts';

type DrawOrder = Extract<PrinterOrder, { order: 'draw' }>;
type PagesOrder = Extract<PrinterOrder, { order: 'pages' }>;
type PagesIn = (order: PagesOrder) => PrinterAnswer;

/** Worker: all pictures of a size, then its booklet's pages in any language, edition and paper, as HTML. */
function start(): void {
  let asked: PagesOrder | null = null;
  let pagesIn: PagesIn | null = null;
  const print = async (order: PagesOrder, from: PagesIn): Promise<void> => { postMessage(await orFaulty(0, () => from(order))); };

  addEventListener('message', ({ data }: MessageEvent<PrinterOrder>) => {
    if (data.order === 'pages') {
      asked = data;
      if (pagesIn !== null) void print(data, pagesIn);
      return;
    }
    void orFaulty(data.subject.run, () => drawnPages(data)).then((result) => {
      if ('answer' in result) postMessage(result);
      else {
        ({ pagesIn } = result);
        if (asked !== null) void print(asked, pagesIn);
      }
    });
  });
}

async function drawnPages({ subject, locales }: DrawOrder): Promise<{ readonly pagesIn: PagesIn }> {
  const { run, size } = subject;
  const item = itemOf(subject);
  const model = buildModel(item, size);
  const report = checkModel(model, declaredFor(item, size));
  const plan = planItem(model, item.order, await loadSolids(), report.advice.wall);
  const cuts = await planTubes(model);
  await breath();
  const expected = drawing.picturesExpected(plan);
  let drawn = 0;
  const pictures = drawing.itemPictures(model, plan, cuts, await loadSolids(), () => {
    drawn += 1;
    const answer: PrinterAnswer = { answer: 'drawn', run, drawn, expected: Math.max(drawn, expected) };
    postMessage(answer);
  });
  const svgs = new Map(pictures.map(({ id, svg }) => [id, svg]));
  const languages = languagesIn(locales);
  const names = languages.map((lang) => readAbout(locales, lang).name);
  const variants = item.sizes.map((each) => buildModel(item, each.name));
  return {
    pagesIn: ({ lang, edition, paper }) => {
      if (!languages.includes(lang)) throw new Error(`no language ${lang}`);
      const { html, css, dir } = bookletPages({
        model, plan, report, variants, edition, paper: laidFor(PUBLICATIONS[edition], paper),
        pictures: pictureSizes(pictures),
        partScale: drawing.PART_SCALE,
        revision: item.revision,
        contentMark: '········',
        despiteFindings: report.findings.some((finding) => finding.verdict === 'fail'),
        words: loadWords(locales, lang),
        languages: names,
        glyphs: glyphsFrom(drawing),
        placePicture: shownAt(svgs),
      });
      return { answer: 'pages', run, lang, edition, paper, html, css, dir };
    },
  };
}

/** The picture itself where the printer will lay it. */
const shownAt = (svgs: ReadonlyMap<string, string>): PlacePicture => ({ id, width, height, alt }) =>
  (svgs.get(id) ?? '<svg>').replace(/^<svg([^>]*)>/, (_, attributes: string) =>
    `<svg${attributes.replace(/ (width|height)="[^"]*"/g, '')} width="${width}mm" height="${height}mm" role="img" aria-label="${alt.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;')}">`);

start();
