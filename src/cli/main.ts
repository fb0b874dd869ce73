import { Command } from 'commander';
import type { MakeOptions } from './make.ts';
import type { ImportOptions } from './words.ts';

// Each command loads what it needs when it is called: help and a mistyped name are told at once.
const program = new Command('foldwright')
  .description('From one text model of an item to its geometry, checks, step order and printed booklets.')
  .configureOutput({ outputError: (text, write) => { write(`foldwright: ${text.trim().replace(/^error: /, '').replace(/\.$/, '').replaceAll('\n', ' ')}; see: foldwright --help\n`); } })
  .enablePositionalOptions();

program.command('make')
  .description('makes the booklets of an item, or of all items when none is named')
  .argument('[item]', 'name of a folder under steps/')
  .option('--size <names...>', 'size variants; all unless given')
  .option('--lang <codes...>', 'languages of the words, or two or three side by side such as ar+fr; each under locales/ unless given')
  .option('--edition <names...>', 'editions: pictures, words, wall, overview; the first two unless given')
  .option('--paper <names...>', 'papers: a4, letter, a5, half-letter, for the wall also a3; the first two unless given')
  .option('--bind <way>', 'stitched: also two pages on a sheet, to fold and staple; a5 and half-letter unless papers are given')
  .option('--creep <length>', 'thickness of a sheet: inner sheets are printed nearer to the fold by as much; 0.1 mm unless given')
  .option('--sheets <number>', 'most sheets stapled at once; 15 unless given')
  .option('--out <folder>', 'where the booklets go', 'booklets')
  .option('--despite-findings', 'prints although a check fails; every page is stamped')
  .action(async (item: string | undefined, options: MakeOptions) => (await import('./make.ts')).makeCommand(item, options));

program.command('check')
  .description('prints the findings of every size variant; fails when one fails')
  .argument('[item]', 'name of a folder under steps/')
  .option('--size <names...>', 'size variants; all unless given')
  .action(async (item: string | undefined, options: { size?: string[] }) => { (await import('./check.ts')).checkCommand(item, options); });

program.command('draw')
  .description('writes the picture of one step as SVG')
  .argument('<item>', 'name of a folder under steps/')
  .requiredOption('--step <number>', 'number of the step')
  .option('--size <name>', 'size variant; the item\'s second one unless given')
  .option('--out <file>', 'file to write; <item>-<size>-step-<number>.svg unless given')
  .action(async (item: string, options: { step: string; size?: string; out?: string }) => (await import('./draw.ts')).drawCommand(item, options));

program.command('schemas')
  .description('writes the JSON Schemas of the file formats to steps/schemas/')
  .action(async () => { (await import('./schemas.ts')).schemasCommand(); });

const words = program.command('words')
  .description('gives the texts to translators and takes their translations back, as XLIFF 2.1');

words.command('export')
  .description('writes all texts for a translator, and the pictures they go with')
  .requiredOption('--lang <code>', 'language to translate into; a new one if locales/ has no such folder')
  .option('--out <file>', 'file to write; words-<code>.xlf unless given')
  .action(async (options: { lang: string; out?: string }) => (await import('./words.ts')).wordsExportCommand(options));

words.command('import')
  .description('takes a translated file over into locales/')
  .argument('<file>', 'XLIFF file as it came back')
  .option('--reviewed-by <name>', 'marks the language as reviewed by this person')
  .option('--on <date>', 'day of the review, such as 2026-03-14; today unless given')
  .action(async (file: string, options: ImportOptions) => { (await import('./words.ts')).wordsImportCommand(file, options); });

// A reader that stops early, such as `head`, is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit();
  throw error;
});

try {
  await program.parseAsync();
} catch (error) {
  const { failure } = await import('./failure.ts');
  process.stderr.write(`${failure(error)}\n`);
  process.exitCode = 1;
}
