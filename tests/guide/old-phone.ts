import { spawn, spawnSync, type ChildProcess } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { once } from 'node:events';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { createInterface } from 'node:readline';
import { pathToFileURL } from 'node:url';
import { brotliDecompressSync } from 'node:zlib';
import CDP from 'chrome-remote-interface';
import { chooseBrowser } from '../../src/booklet/print/chooseBrowser.ts';

/**
 * A guide opened in the browser engine of an old phone, one of autumn 2018. Today's driver of browsers asks for more than
 * that engine knows, so it is driven by its own protocol.
 */
export interface OldPhone {
  /** The engine's version, as it names itself. */
  readonly engine: string;
  /** What the page complained about, errors that nothing caught among them. */
  readonly told: readonly string[];
  /** Runs an expression in the page and gives its value, once it has settled. */
  readonly run: (expression: string) => Promise<unknown>;
  /** Taps the middle of the first element that matches and is shown; afterwards the page has been drawn twice. */
  readonly tap: (selector: string) => Promise<void>;
  /** Shows a page by its address, as the overview does. */
  readonly goTo: (id: string) => Promise<void>;
  readonly reload: () => Promise<void>;
  readonly close: () => Promise<void>;
}

const WIDTH = 360;
const HEIGHT = 640;

/** Without graphics in three dimensions, as many of its time; no address outside is looked up. */
const SWITCHES = ['--headless', '--no-sandbox', '--disable-gpu', '--disable-3d-apis', '--disable-dev-shm-usage', '--hide-scrollbars', '--remote-debugging-port=0', '--host-resolver-rules=MAP * ~NOTFOUND'];

const TWO_FRAMES = 'new Promise((resolve) => { requestAnimationFrame(() => { requestAnimationFrame(resolve); }); })';

/** An engine unpacked into a folder of its own. */
export interface OldEngine {
  readonly program: string;
  readonly folder: string;
  readonly env: NodeJS.ProcessEnv;
}

/** The engine, where this machine runs it: it is a program for Linux, and libraries that it needs may be missing. Null where it does not start. */
export async function oldEngine(): Promise<OldEngine | null> {
  if (process.platform !== 'linux' || process.arch !== 'x64') return null;
  const folder = mkdtempSync(join(tmpdir(), 'foldwright-old-phone-'));
  const program = join(folder, 'chromium');
  writeFileSync(program, packedEngine(), { mode: 0o755 });
  const env = { ...(await chooseBrowser()).env };
  if (spawnSync(program, ['--headless', '--no-sandbox', '--disable-gpu', `--user-data-dir=${join(folder, 'profile')}`, '--dump-dom', 'about:blank'], { env }).status === 0) return { program, folder, env };
  rmSync(folder, { recursive: true });
  return null;
}

export async function openOldPhone({ program, folder, env }: OldEngine, html: string): Promise<OldPhone> {
  writeFileSync(join(folder, 'guide.html'), html);
  const engine = spawn(program, [...SWITCHES, `--user-data-dir=${join(folder, 'profile')}`, 'about:blank'], { env, stdio: ['ignore', 'ignore', 'pipe'] });
  const driver = await CDP({ port: await portOf(engine), local: true });
  const told = await listenTo(driver);
  await driver.Emulation.setDeviceMetricsOverride({ width: WIDTH, height: HEIGHT, deviceScaleFactor: 2, mobile: true });
  await driver.Emulation.setTouchEmulationEnabled({ enabled: true });
  const run = (expression: string): Promise<unknown> => settled(driver, expression);
  const loaded = async (load: () => Promise<unknown>): Promise<void> => {
    const fired = driver.Page.loadEventFired();
    await load();
    await fired;
    await run(TWO_FRAMES);
  };
  await loaded(() => driver.Page.navigate({ url: pathToFileURL(join(folder, 'guide.html')).href }));
  return {
    engine: (await driver.Browser.getVersion()).product,
    told, run,
    tap: async (selector) => {
      const [x, y] = JSON.parse(String(await run(middleOf(selector)))) as [number, number];
      await driver.Input.dispatchTouchEvent({ type: 'touchStart', touchPoints: [{ x, y }] });
      await driver.Input.dispatchTouchEvent({ type: 'touchEnd', touchPoints: [] });
      await run(TWO_FRAMES);
    },
    goTo: async (id) => { await run(`new Promise((resolve) => { addEventListener('hashchange', resolve, { once: true }); location.hash = ${JSON.stringify(id)}; }).then(() => ${TWO_FRAMES})`); },
    reload: () => loaded(() => driver.Page.reload({})),
    close: async () => {
      await driver.close();
      const ended = once(engine, 'exit');
      engine.kill('SIGKILL');
      await ended;
      // Its helpers end a moment after it and may write until then.
      rmSync(folder, { recursive: true, force: true, maxRetries: 20 });
    },
  };
}

function packedEngine(): Buffer {
  const bin = join(dirname(dirname(createRequire(import.meta.url).resolve('chromium-of-2018'))), 'bin');
  const [name] = readdirSync(bin).filter((each) => each.startsWith('chromium'));
  if (name === undefined) throw new Error(`${bin}: no browser engine`);
  return brotliDecompressSync(readFileSync(join(bin, name)));
}

/** The port on which it can be driven; it tells it once it listens. */
async function portOf(engine: ChildProcess): Promise<number> {
  if (engine.stderr === null) throw new Error('the engine tells nothing');
  const told: string[] = [];
  for await (const line of createInterface({ input: engine.stderr })) {
    const port = /DevTools listening on ws:\/\/[^:]+:(\d+)/.exec(line)?.[1];
    if (port !== undefined) {
      engine.stderr.resume();
      return Number(port);
    }
    told.push(line);
  }
  throw new Error(`the engine of 2018 did not start: ${told.join('\n')}`);
}

async function listenTo({ Page, Runtime, Log }: CDP.Client): Promise<string[]> {
  const told: string[] = [];
  Runtime.exceptionThrown(({ exceptionDetails: { text, exception } }) => { told.push(exception?.description ?? text); });
  Runtime.consoleAPICalled(({ type, args }) => { if (type === 'error') told.push(args.map(({ value }) => String(value)).join(' ')); });
  Log.entryAdded(({ entry }) => { if (entry.level === 'error') told.push(entry.text); });
  await Promise.all([Page.enable(), Runtime.enable(), Log.enable()]);
  return told;
}

async function settled({ Runtime }: CDP.Client, expression: string): Promise<unknown> {
  const { result, exceptionDetails } = await Runtime.evaluate({ expression, awaitPromise: true, returnByValue: true });
  if (exceptionDetails !== undefined) throw new Error(exceptionDetails.exception?.description ?? exceptionDetails.text);
  return result.value;
}

/** Where the first shown element that matches lies, px; brought to the screen first. */
const middleOf = (selector: string): string => `(() => {
  const shown = [...document.querySelectorAll(${JSON.stringify(selector)})].find((each) => each.getClientRects().length > 0);
  if (shown === undefined) throw new Error(${JSON.stringify(`nothing shown is ${selector}`)});
  shown.scrollIntoView({ block: 'nearest' });
  const { left, top, width, height } = shown.getBoundingClientRect();
  return JSON.stringify([left + width / 2, top + height / 2]);
})()`;
