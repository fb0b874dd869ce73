import { join } from 'node:path';
import { cutPages, FULL_PAPERS, glyphsFrom, languagesIn, loadWords, openPrinter, picturePlace, pictureSizes, type Paper, type Words } from '../booklet/index.ts';
import type { CutOrder, Edges } from '../cut/index.ts';
import * as drawing from '../draw/index.ts';
import { cutRecord } from './cut-record.ts';
import { cutReport } from './cut-report.ts';
import { localeFiles, makeFolder } from './files.ts';
import { orderLines } from './order-lines.ts';
import { paperEnding, shortMark, writeTold } from './printed.ts';
import { chosen } from './project.ts';
import { cutPlanner } from './supply.ts';

export interface CutOptions {
  readonly stock?: string;
  /** Whole kits, which is what is taken where no stock is given. */
  readonly kits?: boolean;
  readonly edges?: string;
  readonly lang?: readonly string[];
  readonly paper?: readonly string[];
  readonly out: string;
}

const EDGES: readonly Edges[] = ['straight', 'any'];

/** Plans the cutting of an order, prints what it takes, writes the plan and draws it. What can be refused is refused before anything is written. */
export async function cutCommand(words: readonly string[], options: CutOptions): Promise<void> {
  if (options.stock !== undefined && options.kits === true) throw new Error('--stock and --kits: only one of them; would be right: --stock <file> for what was counted, --kits for whole kits alone');
  const locales = localeFiles('locales');
  const languages = chosen(languagesIn(locales), options.lang, 'lang').map((lang) => loadWords(locales, lang));
  const papers = chosen(FULL_PAPERS, options.paper, 'paper');
  const [edges] = chosen(EDGES, [options.edges ?? 'straight'], 'edges');
  const lines = orderLines(words);
  const order = (await cutPlanner(options.stock, edges))(lines);
  process.stdout.write(`${cutReport(order).join('\n')}\n`);
  makeFolder(options.out);
  const record = `${JSON.stringify(cutRecord(order), null, 2)}\n`;
  writeTold(join(options.out, 'cut.json'), record);
  await print(order, shortMark(record), languages, papers, options.out);
}

async function print(order: CutOrder, contentMark: string, languages: readonly Words[], papers: readonly Paper[], out: string): Promise<void> {
  const pictures = drawing.cutPlanPictures(order);
  const sizes = pictureSizes(pictures);
  const printer = await openPrinter({});
  try {
    const book = await printer.pictures(pictures);
    for (const paper of papers) {
      for (const words of languages) {
        const pages = cutPages({ order, paper, words, pictures: sizes, placePicture: picturePlace, glyphs: glyphsFrom(drawing), contentMark });
        const { html, css, dir, title } = pages;
        writeTold(join(out, `cut-${words.lang}${paperEnding(paper)}.pdf`),
          await printer.document({ id: `cut-${words.lang}-${paper}`, html, css, dir, title, lang: words.lang, paper, contentMark }, book));
      }
    }
  } finally {
    await printer.close();
  }
}
