import { Command } from 'commander';
import type { CutOptions } from './cut.ts';
import type { MakeOptions } from './make.ts';

// Each command loads what it needs when it is called: help and a mistyped name are told at once.
const program = new Command('foldwright')
  .description('From one text model of an item to its geometry, checks, step order and printed booklets.')
  .configureOutput({ outputError: (text, write) => { write(`foldwright: ${text.trim().replace(/^error: /, '').replace(/\.$/, '').replaceAll('\n', ' ')}; see: foldwright --help\n`); } })
  .enablePositionalOptions();

program.command('make')
  .description('makes the booklets of an item, or of all items when none is named')
  .argument('[item]', 'name of a folder under steps/')
  .option('--size <names...>', 'size variants; all unless given')
  .option('--lang <codes...>', 'languages; all under locales/ unless given')
  .option('--edition <names...>', 'editions: pictures, words; both unless given')
  .option('--paper <names...>', 'papers: a4, letter; both unless given')
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

program.command('cut')
  .description('plans the cutting of a mixed order, from counted stock or whole kits, and draws the cut plans')
  .argument('<items...>', 'how many of which item: <item>=6, or <item>:<size>=6; the second size of an item unless given')
  .option('--stock <file>', 'stock file of what was counted, or its table (.csv)')
  .option('--kits', 'whole kits alone; so it is unless --stock is given')
  .option('--edges <kind>', 'cuts in panels: straight from edge to edge, or any that part the pieces', 'straight')
  .option('--lang <codes...>', 'languages; all under locales/ unless given')
  .option('--paper <names...>', 'papers: a4, letter; both unless given')
  .option('--out <folder>', 'where the plans go', 'cuts')
  .action(async (items: string[], options: CutOptions) => (await import('./cut.ts')).cutCommand(items, options));

const stock = program.command('stock')
  .description('takes counted stock to a spreadsheet and back, and prints a sheet to count by');
stock.command('export')
  .description('writes a stock file as a table that a spreadsheet opens')
  .argument('<file>', 'stock file (.yaml)')
  .option('--out <file>', 'table to write; the same name with .csv unless given')
  .action(async (file: string, options: { out?: string }) => { (await import('./stock.ts')).exportStock(file, options); });
stock.command('import')
  .description('writes a table as a stock file')
  .argument('<file>', 'table (.csv)')
  .option('--out <file>', 'stock file to write; the same name with .yaml unless given')
  .action(async (file: string, options: { out?: string }) => { (await import('./stock.ts')).importStock(file, options); });
stock.command('sheet')
  .description('prints sheets to count stock by, to be filled in by hand')
  .option('--lang <codes...>', 'languages; all under locales/ unless given')
  .option('--paper <names...>', 'papers: a4, letter; both unless given')
  .option('--out <folder>', 'where the sheets go', 'cuts')
  .action(async (options: { lang?: string[]; paper?: string[]; out: string }) => (await import('./stock.ts')).surveySheets(options));

program.command('schemas')
  .description('writes the JSON Schemas of the file formats to steps/schemas/')
  .action(async () => { (await import('./schemas.ts')).schemasCommand(); });

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
