import { fork, type ChildProcess } from 'node:child_process';
import { mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { runsOfItem, type BookletOrder, type MakeNews, type MakeOrder, type Making, type PackOrder } from '../page/index.ts';
import { STOP_FILE_VARIABLE, type ProgressNews } from './progress.ts';

const program = fileURLToPath(new URL('./foldwright.mjs', import.meta.url));

/** One run of the command, and the item it is for. */
interface Run {
  readonly item: string;
  readonly args: readonly string[];
}

/** The runs of the command that an order of the page asks for, one after the other. */
const runsOf = (order: MakeOrder): readonly Run[] => (order.what === 'pack' ? packRuns(order) : bookletRuns(order));

function bookletRuns(order: BookletOrder): readonly Run[] {
  const { items, langs, despiteFindings } = order;
  return items.flatMap(({ item, sizes }) => runsOfItem(order).map(({ editions, papers, stitched }) => ({
    item,
    args: [
      'make', item, '--size', ...sizes, ...(langs.length > 0 ? ['--lang', ...langs] : []), '--edition', ...editions, '--paper', ...papers,
      ...(stitched ? ['--bind', 'stitched'] : []), ...(despiteFindings ? ['--despite-findings'] : []),
    ],
  })));
}

function packRuns({ pieces, learners, langs, start, papers }: PackOrder): readonly Run[] {
  const order = pieces.map(({ item, size, count }) => `${item}:${size}=${count}`);
  return langs.map((lang) => ({ item: pieces[0]?.item ?? '', args: ['pack', ...order, '--learners', String(learners), '--lang', lang, '--start', start, '--paper', ...papers] }));
}

/** Runs the command itself in a process of its own, so that the page goes on answering, and tells how it goes. */
export function startMaking(order: MakeOrder, tell: (news: MakeNews) => void): Making {
  const folder = mkdtempSync(join(tmpdir(), 'foldwright-stop-'));
  const stopFile = join(folder, 'stop');
  let isStopped = false;
  let child: ChildProcess | null = null;
  /** Until the browser is started nothing is lost by ending the process at once. */
  let hasBrowser = false;

  const run = async (): Promise<MakeNews> => {
    for (const { item, args } of runsOf(order)) {
      if (isStopped) break;
      tell({ news: 'item', item });
      hasBrowser = false;
      child = fork(program, args, { env: { ...process.env, [STOP_FILE_VARIABLE]: stopFile }, stdio: ['ignore', 'ignore', 'pipe', 'ipc'] });
      const failure = await followed(child, (news) => {
        hasBrowser ||= news.news === 'size';
        pass(news, tell);
      });
      if (failure !== null && !isStopped) return { news: 'end', how: 'failed', told: failure };
    }
    return { news: 'end', how: isStopped ? 'stopped' : 'made' };
  };

  const ended = run()
    .catch((error: unknown): MakeNews => ({ news: 'end', how: 'failed', told: error instanceof Error ? error.message : String(error) }))
    .then((end) => {
      rmSync(folder, { recursive: true, force: true });
      tell(end);
    });

  return {
    stop: () => {
      if (isStopped) return;
      isStopped = true;
      writeFileSync(stopFile, '');
      if (!hasBrowser) child?.kill();
    },
    ended,
  };
}

/** Waits for the end of a run: what it said of its failure, or null when it went well. */
function followed(child: ChildProcess, hear: (news: ProgressNews) => void): Promise<string | null> {
  return new Promise((resolve) => {
    let told = '';
    child.stderr?.on('data', (piece: Buffer) => { told += piece.toString('utf8'); });
    child.on('message', (message) => { hear(message as ProgressNews); });
    child.on('error', (error) => { resolve(error.message); });
    child.on('close', (code) => { resolve(code === 0 ? null : told.trim() || 'it ended without a word'); });
  });
}

function pass(news: ProgressNews, tell: (news: MakeNews) => void): void {
  if (news.news === 'line') tell({ news: 'file', path: news.text, bytes: statSync(news.text).size });
  else tell(news);
}
