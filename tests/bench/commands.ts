import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { program, runCommand, type Run } from './run-command.ts';
import type { Row } from './rows.ts';

const project = fileURLToPath(new URL('../../', import.meta.url));

/** The command in a folder of its own, with what it keeps there: cold is cold. */
interface Bench {
  readonly folder: string;
  readonly run: (...args: readonly string[]) => Promise<Run>;
  readonly env: Readonly<Record<string, string>>;
  readonly close: () => void;
}

function newBench(): Bench {
  const folder = mkdtempSync(join(tmpdir(), 'foldwright-bench-'));
  for (const name of ['steps', 'locales']) cpSync(join(project, name), join(folder, name), { recursive: true });
  const env = { FOLDWRIGHT_CACHE: join(folder, 'kept') };
  return { folder, env, run: (...args) => runCommand(args, folder, env), close: () => { rmSync(folder, { recursive: true, force: true }); } };
}

const row = (work: string, { wall, processor, peakMegabytes }: Run, goal: number | null): Row => ({ work, figure: wall, unit: 's', goal, processor, peakMegabytes });

const BOOKLET = ['make', 'rack', '--size', 'standard', '--lang', 'en', '--edition', 'words', '--paper', 'a4'];

/** The command as its user meets it, wall-clock time: cold and warm. `all` adds the whole catalogue. */
export async function commandRows(all: boolean): Promise<readonly Row[]> {
  const bench = newBench();
  try {
    await bench.run('--help'); // The first start bundles the code; no run is timed with that.
    const rows = [
      row('first booklet of one size in one language, cold', await bench.run(...BOOKLET), 6),
      row('the same, nothing changed', await bench.run(...BOOKLET), 1.5),
      row('one picture, cold', await bench.run('draw', 'chair', '--step', '5'), 1),
      row('the same picture, nothing changed', await bench.run('draw', 'chair', '--step', '5'), 0.3),
      row('the next picture of the same plan', await bench.run('draw', 'chair', '--step', '6'), 0.3),
      await pictureAtSave(bench),
    ];
    return all ? [...rows, ...await catalogueRows(bench)] : rows;
  } finally {
    bench.close();
  }
}

async function catalogueRows(bench: Bench): Promise<readonly Row[]> {
  const whole = await bench.run('make');
  const warm = await bench.run('make');
  change(join(bench.folder, 'steps/stool/item.yaml'));
  const changed = await bench.run('make');
  return [
    row('whole catalogue', whole, 120),
    { work: 'its memory at most', figure: whole.peakMegabytes ?? NaN, unit: 'MB', goal: 1500 },
    row('whole catalogue, nothing changed', warm, 1.5),
    row('one measure of one size changed', changed, 10),
  ];
}

function change(file: string): void {
  const text = readFileSync(file, 'utf8');
  writeFileSync(file, text.replace('    height: 300 mm', '    height: 310 mm'));
}

/** From a save to the picture it gives, by a `watch` that has drawn before. */
async function pictureAtSave({ folder, env }: Bench): Promise<Row> {
  const watching = spawn(process.execPath, [program, 'watch', 'stool', '--size', 'low', '--out', 'watched'], { cwd: folder, env: { ...process.env, ...env }, stdio: ['ignore', 'pipe', 'ignore'] });
  const picture = async (): Promise<void> => {
    for (;;) {
      const [piece] = await once(watching.stdout, 'data') as [Buffer];
      if (piece.toString().includes('stool-low.svg')) return;
    }
  };
  await picture();
  const saved = performance.now();
  change(join(folder, 'steps/stool/item.yaml'));
  await picture();
  const taken = (performance.now() - saved) / 1000;
  writeFileSync(join(folder, 'steps/stool/item.yaml'), readFileSync(join(project, 'steps/stool/item.yaml')));
  const gone = once(watching, 'exit');
  watching.kill();
  await gone;
  return { work: 'watch: from a save to its picture', figure: taken, unit: 's', goal: 1 };
}
