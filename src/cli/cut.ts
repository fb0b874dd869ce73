import { join } from 'node:path';
import { loadSolver, planOrder } from '../cut/index.ts';
import { buildModel } from '../model/index.ts';
import { cutRecord } from './cut-record.ts';
import { cutReport } from './cut-report.ts';
import { writeWhole } from './files.ts';
import { orderLines } from './order-lines.ts';
import { itemsNamed, sizesOf } from './project.ts';
import { readStock } from './stock-file.ts';

export interface CutOptions {
  readonly stock?: string;
  /** Whole kits, which is what is taken where no stock is given. */
  readonly kits?: boolean;
  readonly out: string;
}

/** Plans the cutting of an order, prints what it takes and writes the plan. */
export async function cutCommand(words: readonly string[], options: CutOptions): Promise<void> {
  if (options.stock !== undefined && options.kits === true) throw new Error('--stock and --kits: only one of them; would be right: --stock <file> for what was counted, --kits for whole kits alone');
  const lines = orderLines(words);
  const stock = options.stock === undefined ? null : readStock(options.stock);
  const known = itemsNamed(undefined).flatMap((item) => sizesOf(item).map((size) => buildModel(item, size)));
  const order = planOrder(lines, stock, known, await loadSolver());
  process.stdout.write(`${cutReport(order).join('\n')}\n`);
  const file = join(options.out, 'cut.json');
  writeWhole(file, `${JSON.stringify(cutRecord(order), null, 2)}\n`);
  process.stdout.write(`${file}\n`);
}
