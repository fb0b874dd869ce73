import { join } from 'node:path';
import { COPIES, PUBLICATIONS, shortMark } from '../booklet/index.ts';
import type { Edges } from '../cut/index.ts';
import { languagesAsked, papersAsked } from './asked.ts';
import { cutRecord } from './cut-record.ts';
import { cutReport } from './cut-report.ts';
import { makeFolder, writeTold } from './files.ts';
import { orderLines } from './order-lines.ts';
import { keepAsked, type KeepOptions } from './keeping.ts';
import { plainProgress } from './progress.ts';
import { chosen } from './project.ts';
import { publish } from './publish.ts';
import { cutPlanner } from './supply.ts';

export interface CutOptions extends KeepOptions {
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
  const languages = languagesAsked(options.lang);
  const papers = papersAsked(PUBLICATIONS['cut-plan'], options.paper);
  const [edges] = chosen(EDGES, [options.edges ?? 'straight'], 'edges');
  const lines = orderLines(words);
  const order = (await cutPlanner(options.stock, edges))(lines);
  process.stdout.write(`${cutReport(order).join('\n')}\n`);
  const keep = keepAsked(options);
  makeFolder(options.out);
  const record = `${JSON.stringify(cutRecord(order), null, 2)}\n`;
  writeTold(join(options.out, 'cut.json'), record);
  const copies = COPIES['cut-plan']({ order, contentMark: shortMark(record) }, papers, languages);
  await publish([PUBLICATIONS['cut-plan']], [{ folder: options.out, copies }], plainProgress, { keep });
  keep.trim();
}
