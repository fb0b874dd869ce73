import { readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { exportWords, importWords, isDay, isName, type Review } from '../booklet/index.ts';
import { localeFiles, writeTold, writeWhole } from './files.ts';
import { referencePictures } from './reference-pictures.ts';

const LOCALES = 'locales';

/** Writes all texts for a translator as XLIFF, and the pictures that go with them into a folder beside it. */
export async function wordsExportCommand(options: { readonly lang: string; readonly out?: string }): Promise<void> {
  const out = options.out ?? `words-${options.lang}.xlf`;
  const folder = `${basename(out).replace(/\.(xlf|xliff|xml)$/i, '')}-pictures`;
  const locales = localeFiles(LOCALES);
  // A wrong language is told before the pictures are drawn.
  exportWords(locales, options.lang, [], folder);
  const { xliff, pictures, texts, translated } = exportWords(locales, options.lang, await referencePictures(), folder);
  for (const { id, svg } of pictures) writeWhole(join(dirname(out), folder, `${id}.svg`), svg);
  writeWhole(out, xliff);
  process.stdout.write(`${out}: ${texts} texts, ${translated} with a translation; ${pictures.length} pictures in ${join(dirname(out), folder)}\n`);
}

export interface ImportOptions {
  readonly reviewedBy?: string;
  /** The day of the review; today unless given. */
  readonly on?: string;
}

/** Takes a translator's XLIFF over into the locale files, whole or not at all. */
export function wordsImportCommand(file: string, options: ImportOptions): void {
  const { lang, changed, review, lapsed } = importWords(bytesOf(file), file, localeFiles(LOCALES), reviewOf(options));
  for (const [path, text] of Object.entries(changed)) writeTold(join(LOCALES, path), text);
  if (Object.keys(changed).length === 0) process.stdout.write(`${file}: every text is as it stands; nothing to write\n`);
  if (review !== null) process.stdout.write(`${lang}: reviewed by ${review.by} on ${review.on}\n`);
  if (lapsed !== null) process.stdout.write(`${lang}: texts have changed since ${lapsed.by} reviewed them on ${lapsed.on}; its booklets say that they are a draft\n`);
}

function reviewOf({ reviewedBy, on }: ImportOptions): Review | null {
  if (reviewedBy === undefined && on !== undefined) throw new Error('--on: found no --reviewed-by, would be right: both, or neither');
  if (reviewedBy === undefined) return null;
  if (!isName(reviewedBy)) throw new Error(`--reviewed-by: found ${JSON.stringify(reviewedBy)}, would be right: the name of who read the words over`);
  const day = on ?? new Date().toISOString().slice(0, 10);
  if (!isDay(day)) throw new Error(`--on: found ${JSON.stringify(day)}, would be right: a day such as 2026-03-14`);
  return { by: reviewedBy, on: day };
}

function bytesOf(file: string): Uint8Array {
  try {
    return readFileSync(file);
  } catch (error) {
    const told = error instanceof Error && 'code' in error ? String(error.code) : String(error);
    throw new Error(`${file}: cannot be read (${told}); would be right: an XLIFF file as foldwright words export writes it`, { cause: error });
  }
}
