import { fork, type ChildProcess } from 'node:child_process';
import { request } from 'node:http';
import { fileURLToPath } from 'node:url';
import { newWorkshop, type Workshop } from '../cli/workshop.ts';

const program = fileURLToPath(new URL('../../src/cli/foldwright.mjs', import.meta.url));

/** The command's page, served from a workshop folder of its own. */
export interface ServedPage {
  readonly shop: Workshop;
  /** Ends with a slash, or with the key of a shared page. */
  readonly url: string;
  /** What the program has said of itself. */
  readonly told: () => string;
  /** Ends the program and leaves its folder; `again` starts it at the same address. */
  halt(): Promise<void>;
  again(): Promise<void>;
  close(): Promise<void>;
}

export async function servePage(options: readonly string[] = [], shop = newWorkshop()): Promise<ServedPage> {
  let told = '';
  const start = (port: string): ChildProcess => {
    const started = fork(program, ['page', '--port', port, ...options], { cwd: shop.folder, stdio: ['ignore', 'pipe', 'pipe', 'ipc'] });
    started.stderr?.on('data', (piece: Buffer) => { told += piece.toString(); });
    return started;
  };
  let child = start('0');
  const url = await firstLine(child, () => told);
  const halt = async (): Promise<void> => {
    if (child.exitCode !== null || child.signalCode !== null) return;
    const ended = new Promise((resolve) => { child.once('exit', resolve); });
    child.kill();
    await ended;
  };
  return {
    shop, url, told: () => told, halt,
    again: async () => {
      child = start(new URL(url).port);
      await firstLine(child, () => told);
    },
    close: async () => {
      await halt();
      shop.close();
    },
  };
}

function firstLine(child: ChildProcess, told: () => string): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = '';
    child.stdout?.on('data', (piece: Buffer) => {
      said += piece.toString();
      const [line = '', ...more] = said.split('\n');
      if (more.length > 0) resolve(line);
    });
    child.once('exit', (code) => { reject(new Error(`the page ended with ${String(code)}: ${told()}`)); });
  });
}

export interface Answered {
  readonly status: number;
  readonly headers: Readonly<Record<string, string | readonly string[] | undefined>>;
  readonly body: string;
  readonly bytes: Buffer;
}

/** Asks as any program may, with whichever headers. */
export function ask(url: string, path: string, headers: Readonly<Record<string, string>> = {}, post?: string): Promise<Answered> {
  const { hostname, port } = new URL(url);
  return new Promise((resolve, reject) => {
    const asked = request({ hostname, port, path, headers, method: post === undefined ? 'GET' : 'POST' }, (response) => {
      const pieces: Buffer[] = [];
      response.on('data', (piece: Buffer) => { pieces.push(piece); });
      response.on('end', () => {
        const bytes = Buffer.concat(pieces);
        resolve({ status: response.statusCode ?? 0, headers: response.headers, body: bytes.toString(), bytes });
      });
    });
    asked.on('error', reject);
    asked.end(post);
  });
}
