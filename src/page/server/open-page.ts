import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { languagesIn } from '../../booklet/index.ts';
import { inUrl, isLoopback, namesOf } from './addresses.ts';
import { answer, type Service } from './answers.ts';
import { bundledAnswers } from './bundle.ts';
import { newFixedAnswers } from './fixed-answers.ts';
import { fontAnswers } from './fonts.ts';
import { newGuard } from './guard.ts';
import { newKey } from './key.ts';
import { LIMITS } from './limits.ts';
import { newMakings } from './makings.ts';
import type { Answer } from './respond.ts';
import { shell } from './shell.ts';
import type { Workshop } from './workshop.ts';

export interface PageOptions {
  /** 0 takes any that is free. */
  readonly port: number;
  /** The address to listen on. */
  readonly host: string;
  /** Whether those on other computers, where they reach it, may change items and have booklets made. */
  readonly allowChanges: boolean;
  readonly workshop: Workshop;
}

export interface OpenPage {
  /** Where a browser finds it; first the address for this computer. Shared ones hold the key without which nobody is let in. */
  readonly urls: readonly [string, ...string[]];
  /** Whether other computers reach it too. */
  readonly isShared: boolean;
  close(): Promise<void>;
}

/** Bundles the page and serves it until it is closed. Throws where the port or the address cannot be had. */
export async function openPage({ port, host, allowChanges, workshop }: PageOptions): Promise<OpenPage> {
  // First the port: that it is taken is told at once.
  const server = createServer({ maxHeaderSize: LIMITS.headers, headersTimeout: LIMITS.request, requestTimeout: LIMITS.request, connectionsCheckingInterval: LIMITS.look });
  server.maxConnections = LIMITS.connections;
  server.setTimeout(LIMITS.silence);
  // Whoever asks while the page is bundled is answered when it is: the port listens before.
  const begun = new Promise<Service>((begin) => { server.once('ready', begin); });
  server.on('request', (request: IncomingMessage, response: ServerResponse) => { void begun.then((service) => answer(service, request, response)); });
  const taken = await listening(server, port, host);
  const fixed = newFixedAnswers(new Map<string, Answer>([
    ['/', { type: 'text/html; charset=utf-8', body: shell }],
    ...await bundledAnswers(),
    ...fontAnswers(languagesIn(workshop.texts().locales)),
  ]));
  const isShared = !isLoopback(host);
  const key = isShared ? newKey(taken) : null;
  const makings = newMakings(workshop);
  server.emit('ready', { fixed, guard: newGuard(namesOf(host), taken), key, mayChange: !isShared || allowChanges, makings, workshop } satisfies Service);
  const [first, ...others] = addressesOf(host).map((name) => `http://${name}:${taken}/`).map((url) => key?.inAddress(url) ?? url);
  return {
    urls: [first ?? '', ...others],
    isShared,
    close: async () => {
      await makings.close();
      server.closeAllConnections();
      await new Promise((closed) => { server.close(closed); });
    },
  };
}

/** Where it is looked for: that of this computer, and, where it listens on all of them, those by which others reach it. */
const addressesOf = (host: string): readonly string[] =>
  (host === '0.0.0.0' || host === '::' ? ['127.0.0.1', ...namesOf(host).filter((name) => !isLoopback(name.replace(/^\[|\]$/g, '')) && (host === '::' || !name.startsWith('[')) && !name.startsWith('[fe80'))] : [inUrl(host)]);

function listening(server: Server, port: number, host: string): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      reject(new Error(error.code === 'EADDRINUSE' ? `--port ${port}: taken by another program; would be right: one that is free, or 0 for any` : `--host ${host}: cannot be listened on (${error.code ?? error.message})`));
    });
    server.listen(port, host, () => {
      const address = server.address();
      resolve(typeof address === 'object' && address !== null ? address.port : port);
    });
  });
}
