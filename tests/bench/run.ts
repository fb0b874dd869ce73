/**
 * Measures the goals of speed and prints them as a table: `npm run bench`, or `npm run bench -- --all` with the whole
 * catalogue. `--json <file>` writes the figures besides. Times of commands are wall-clock times and want an idle
 * machine; the processor's are told beside them.
 */
import { writeFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import { commandRows } from './commands.ts';
import { drawingRows } from './drawings.ts';
import { pageRows } from './pages.ts';
import { table } from './rows.ts';

const args = process.argv.slice(2);
const json = args.includes('--json') ? args[args.indexOf('--json') + 1] : undefined;
const machine = { cores: cpus().length, model: cpus()[0]?.model ?? '', node: process.version, loadBefore: loadavg()[0] };
const rows = [...await commandRows(args.includes('--all')), ...await drawingRows(), ...await pageRows()];
const measured = { ...machine, loadAfter: loadavg()[0], rows };
console.log(`${machine.cores} cores, ${machine.model}, Node ${machine.node}, load ${String(machine.loadBefore)} before, ${String(measured.loadAfter)} after\n\n${table(rows)}`);
if (json !== undefined) writeFileSync(json, `${JSON.stringify(measured, null, 2)}\n`);
