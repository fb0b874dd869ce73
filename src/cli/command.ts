import { Command, CommanderError } from 'commander';
import { PAPERS, papersOf } from '../booklet/papers/index.ts';
import { EDITIONS, PUBLICATIONS } from '../booklet/publications/facts.ts';
import { EXIT } from './exit-codes.ts';
import { help } from './help.ts';
import type { ChangesOptions } from './changes/index.ts';
import type { DrawOptions } from './drawn-step.ts';
import type { GuideOptions } from './guide.ts';
import type { CutOptions } from './cut.ts';
import type { MakeOptions } from './make-options.ts';
import type { ImportOptions } from './words.ts';
import type { PackOptions } from './pack.ts';
import type { SheetsOptions } from './sheets.ts';
import type { WatchOptions } from './watch.ts';

// Each command loads what it needs when it is called: help and a mistyped name are told at once. So the facts of
// publications come from their own file, and not through the room's index, which loads all that prints.
const program = new Command('foldwright')
  .description('From one text model of an item to its geometry, checks, step order and printed booklets.')
  .configureHelp(help)
  .helpOption('-h, --help', 'tells how it is called, and nothing else')
  .helpCommand(false)
  .exitOverride()
  // What is wrong with a call is told below, in our own words.
  .configureOutput({ outputError: () => undefined })
  .enablePositionalOptions();

/** Help for the papers of one publication. */
const papersOn = ({ papers }: { readonly papers: readonly string[] }): string => `papers: ${papers.join(', ')}; default: ${papers.length > 2 ? 'the first two' : 'both'}`;

/** Help for the papers that editions have for themselves. */
const papersApart = (): string => EDITIONS.map(({ name, papers }) => ({ name, apart: papers.filter((paper) => PAPERS[paper].sort === 'apart') }))
  .filter(({ apart }) => apart.length > 0)
  .map(({ name, apart }) => `, for the ${name} also ${apart.join(', ')}`).join('');

/** A command whose results are kept. */
const keeping = (command: Command): Command => command
  .option('--cache <folder>', 'where results are kept; default: the user\'s cache folder')
  .option('--no-cache', 'makes everything anew and keeps nothing');

keeping(program.command('make'))
  .description('makes the booklets of an item, or of all items when none is named')
  .argument('[item]', 'name of a folder under steps/')
  .option('--size <names...>', 'size variants; default: all')
  .option('--lang <codes...>', 'languages of the words, or two or three side by side such as ar+fr; default: each under locales/')
  .option('--edition <names...>', `editions: ${EDITIONS.map(({ name }) => name).join(', ')}; default: the first two`)
  .option('--paper <names...>', `papers: ${papersOf('full', 'half').join(', ')}${papersApart()}; default: the first two`)
  .option('--bind <way>', `stitched: also two pages on a sheet, to fold and staple; default papers: ${PUBLICATIONS.stitched.papers.join(' and ')}`)
  .option('--creep <length>', 'thickness of a sheet: inner sheets are printed nearer to the fold by as much; default: 0.1 mm')
  .option('--sheets <number>', 'most sheets stapled at once; default: 15')
  .option('--out <folder>', 'where the booklets go', 'booklets')
  .option('--despite-findings', 'prints even if a check fails; every page is stamped')
  .option('--share <i/n>', 'makes one of n shares of it all, such as 2/3; array/3 takes the 2 from the variable of an array of jobs, array the 3 too')
  .action(async (item: string | undefined, options: MakeOptions) => (await import('./make.ts')).makeCommand(item, options));

program.command('gather')
  .description('puts shares together that make --share has made, and tells which are missing')
  .argument('<folders...>', 'folders that shares were made into')
  .option('--out <folder>', 'where the booklets go', 'booklets')
  .action(async (folders: string[], options: { out: string }) => { (await import('./shares/gather.ts')).gatherCommand(folders, options); });

keeping(program.command('watch'))
  .description('draws an item at each save, and makes its booklets in the background, until Ctrl-C')
  .argument('<item>', 'name of a folder under steps/')
  .option('--size <names...>', 'size variants; default: all; the first of them is drawn, by default the item\'s second')
  .option('--lang <codes...>', 'languages of the words, as for make')
  .option('--edition <names...>', 'editions, as for make')
  .option('--paper <names...>', 'papers, as for make')
  .option('--out <folder>', 'where the picture and the booklets go', 'booklets')
  .option('--despite-findings', 'makes booklets even if a check fails; every page is stamped')
  .action(async (item: string, options: WatchOptions) => (await import('./watch.ts')).watchCommand(item, options));

keeping(program.command('changes'))
  .description('tells what changed of an item since an earlier build or revision: measures, parts, cuts, steps, findings, loads, pictures and their pages')
  .argument('<item>', 'name of a folder under steps/')
  .option('--size <names...>', 'size variants; default: all')
  .option('--since <folder>', 'folder of the earlier build', 'booklets')
  .option('--from <revision>', 'revision in git to compare with in place of a build, such as HEAD~1')
  .option('--out <file>', 'page to write (.html) with each changed picture before and after')
  .option('--print <folder>', 'where a PDF of it goes, for each size that changed: pages to print again, figures, pictures before and after')
  .option('--lang <codes...>', 'languages of what is printed', ['en'])
  .option('--paper <names...>', papersOn(PUBLICATIONS['change-sheets']))
  .action(async (item: string, options: ChangesOptions) => (await import('./changes/index.ts')).changesCommand(item, options));

program.command('check')
  .description('prints the findings of every size variant; fails when one fails')
  .argument('[item]', 'name of a folder under steps/')
  .option('--size <names...>', 'size variants; default: all')
  .action(async (item: string | undefined, options: { size?: string[] }) => { (await import('./check.ts')).checkCommand(item, options); });

program.command('work')
  .description('finds the order in which an item is put together by taking it apart, and proves each motion free')
  .argument('<item>', 'name of a folder under steps/')
  .option('--size <names...>', 'size variants; default: all')
  .action(async (item: string, options: { size?: string[] }) => (await import('./work.ts')).workCommand(item, options));

keeping(program.command('draw'))
  .description('writes the picture of one step as SVG')
  .argument('<item>', 'name of a folder under steps/')
  .requiredOption('--step <number>', 'number of the step')
  .option('--size <name>', 'size variant; default: the item\'s second one')
  .option('--out <file>', 'file to write; default: <item>-<size>-step-<number>.svg')
  .action(async (item: string, options: DrawOptions) => (await import('./draw.ts')).drawCommand(item, options));

program.command('page')
  .description('serves the workbench page to a browser on this computer, until Ctrl-C')
  .option('--port <number>', 'port to serve on; 0 takes any that is free', '4176')
  .option('--host <address>', 'address to serve on; others in the network reach the page only when this says so, and only by the address that is printed', '127.0.0.1')
  .option('--allow-changes', 'those in the network may also change items and make booklets')
  .action(async (options: { port: string; host: string; allowChanges?: boolean }) => (await import('./page.ts')).pageCommand(options));
keeping(program.command('guide'))
  .description('writes the guide of an item for phones, one HTML file a size, without a browser that prints')
  .argument('<item>', 'name of a folder under steps/')
  .option('--size <names...>', 'size variants; default: all')
  .option('--lang <codes...>', 'languages in it; default: all under locales/')
  .option('--out <folder>', 'where it goes', 'booklets')
  .option('--despite-findings', 'writes it even if a check fails; every page is stamped')
  .action(async (item: string, options: GuideOptions) => (await import('./guide.ts')).guideCommand(item, options));
keeping(program.command('cut'))
  .description('plans the cutting of a mixed order, from counted stock or whole kits, and draws the cut plans')
  .argument('<items...>', 'how many of which item: <item>=6, or <item>:<size>=6; default: the second size of an item')
  .option('--stock <file>', 'stock file of what was counted, or its table (.csv)')
  .option('--kits', 'whole kits alone; the default without --stock')
  .option('--edges <kind>', 'cuts in panels: straight from edge to edge, or any that part the pieces', 'straight')
  .option('--lang <codes...>', 'languages; default: all under locales/')
  .option('--paper <names...>', papersOn(PUBLICATIONS['cut-plan']))
  .option('--out <folder>', 'where the plans go', 'cuts')
  .action(async (items: string[], options: CutOptions) => (await import('./cut.ts')).cutCommand(items, options));

const stock = program.command('stock')
  .helpCommand(false)
  .description('exports counted stock to a spreadsheet, imports it again, and prints count sheets');
stock.command('export')
  .description('writes a stock file as a table that a spreadsheet opens')
  .argument('<file>', 'stock file (.yaml)')
  .option('--out <file>', 'table to write; default: the same name with .csv')
  .action(async (file: string, options: { out?: string }) => { (await import('./stock.ts')).exportStock(file, options); });
stock.command('import')
  .description('writes a table as a stock file')
  .argument('<file>', 'table (.csv)')
  .option('--out <file>', 'stock file to write; default: the same name with .yaml')
  .action(async (file: string, options: { out?: string }) => { (await import('./stock.ts')).importStock(file, options); });
stock.command('sheet')
  .description('prints count sheets, to be filled in by hand')
  .option('--lang <codes...>', 'languages; default: all under locales/')
  .option('--paper <names...>', papersOn(PUBLICATIONS['survey-sheet']))
  .option('--out <folder>', 'where the sheets go', 'cuts')
  .action(async (options: { lang?: string[]; paper?: string[]; out: string }) => (await import('./stock.ts')).surveySheets(options));

keeping(program.command('sheets'))
  .description('prints marking sheets at true size: templates in tiles, and gauges')
  .argument('<item>', 'name of a folder under steps/')
  .option('--size <names...>', 'size variants; default: all')
  .option('--paper <names...>', papersOn(PUBLICATIONS['marking-sheets']))
  .option('--out <folder>', 'where the sheets go', 'booklets')
  .action(async (item: string, options: SheetsOptions) => (await import('./sheets.ts')).sheetsCommand(item, options));

keeping(program.command('pack'))
  .description('prints a workshop pack: what to bring, timetable, trainer\'s notes, check lists')
  .argument('<order...>', 'what is built: <item>=<number> or <item>:<size>=<number>')
  .requiredOption('--learners <number>', 'how many learn')
  .option('--lang <code>', 'language', 'en')
  .option('--paper <names...>', papersOn(PUBLICATIONS['workshop-pack']))
  .option('--start <time>', 'when each day begins', '08:30')
  .option('--stock <file>', 'stock file of what was counted, or its table (.csv); default: whole kits')
  .option('--out <folder>', 'where the pack goes', 'booklets')
  .action(async (order: string[], options: PackOptions) => (await import('./pack.ts')).packCommand(order, options));

program.command('schemas')
  .description('writes the JSON Schemas of the file formats to steps/schemas/')
  .action(async () => { (await import('./schemas.ts')).schemasCommand(); });

const words = program.command('words')
  .helpCommand(false)
  .description('exports the texts for translators and imports their translations, as XLIFF 2.1');

words.command('export')
  .description('writes all texts for a translator, and the pictures they go with')
  .requiredOption('--lang <code>', 'language to translate into; a new one if locales/ has no such folder')
  .option('--out <file>', 'file to write; default: words-<code>.xlf')
  .action(async (options: { lang: string; out?: string }) => (await import('./words.ts')).wordsExportCommand(options));

words.command('import')
  .description('imports a translated file into locales/')
  .argument('<file>', 'XLIFF file as it came back')
  .option('--reviewed-by <name>', 'marks the language as reviewed by this person')
  .option('--on <date>', 'day of the review, such as 2026-03-14; default: today')
  .action(async (file: string, options: ImportOptions) => { (await import('./words.ts')).wordsImportCommand(file, options); });

/** Runs the command as it is called: the words after its name. Gives the code that it ends with, and never throws. */
export async function foldwright(args: readonly string[]): Promise<number> {
  try {
    await program.parseAsync(args, { from: 'user' });
    return 0;
  } catch (error) {
    return end(error);
  }
}

/** Tells how the command failed, and gives what it ends with. */
export async function end(error: unknown): Promise<number> {
  // Help that was asked for is no failure; a call that names no command gets help and fails.
  if (error instanceof CommanderError && error.code === 'commander.helpDisplayed') return 0;
  const { failure } = await import('./failure.ts');
  const { told, code } = error instanceof CommanderError && error.code === 'commander.help' ? { told: '', code: EXIT.input } : failure(error);
  if (told !== '') process.stderr.write(`${told}\n`);
  return code;
}
