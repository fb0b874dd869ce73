import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { languagesIn } from '../../booklet/index.ts';
import type { Alive, ProjectTexts } from '../types.ts';
import { inUrl, isLoopback, namesOf } from './addresses.ts';
import { bundledAnswers } from './bundle.ts';
import { fontAnswers } from './fonts.ts';
import { growItem, readGrowOrder } from './grow.ts';
import { newGuard, type Guard } from './guard.ts';
import { newMakings, type Makings } from './makings.ts';
import { readMakeOrder, readSaveOrder } from './orders.ts';
import { jsonOf, send, sendJson, sendLine, type Answer } from './respond.ts';
import { markOf, saveValues } from './save.ts';
import { shell } from './shell.ts';
import type { Workshop } from './workshop.ts';

export interface PageOptions {
  /** 0 takes any that is free. */
  readonly port: number;
  /** The address to listen on. */
  readonly host: string;
  readonly workshop: Workshop;
}

export interface OpenPage {
  /** Where a browser finds it. */
  readonly url: string;
  /** Whether other computers reach it too. */
  readonly isShared: boolean;
  close(): Promise<void>;
}

/** Bundles the page and serves it until it is closed. Throws where the port or the address cannot be had. */
export async function openPage({ port, host, workshop }: PageOptions): Promise<OpenPage> {
  // First the port: that it is taken is told at once.
  const server = createServer();
  // Whoever asks while the page is bundled is answered when it is: the port listens before.
  const begun = new Promise<Service>((begin) => { server.once('ready', begin); });
  server.on('request', (request: IncomingMessage, response: ServerResponse) => { void begun.then((service) => answer(service, request, response)); });
  const taken = await listening(server, port, host);
  const fixed = new Map<string, Answer>([
    ['/', { type: 'text/html; charset=utf-8', body: shell }],
    ...await bundledAnswers(),
    ...fontAnswers(languagesIn(workshop.texts().locales)),
  ]);
  const makings = newMakings(workshop);
  const guard = newGuard(namesOf(host), taken);
  server.emit('ready', { fixed, guard, makings, workshop } satisfies Service);
  return {
    url: `http://${host === '0.0.0.0' || host === '::' ? '127.0.0.1' : inUrl(host)}:${taken}/`,
    isShared: !isLoopback(host),
    close: async () => {
      await makings.close();
      server.closeAllConnections();
      await new Promise((closed) => { server.close(closed); });
    },
  };
}

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

interface Service {
  readonly fixed: ReadonlyMap<string, Answer>;
  readonly guard: Guard;
  readonly makings: Makings;
  readonly workshop: Workshop;
}

async function answer(service: Service, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const refusal = service.guard(request);
  if (refusal !== null) {
    sendLine(response, 403, refusal);
    return;
  }
  try {
    await (request.method === 'POST' ? done(service, request, response) : given(service, request, response));
  } catch (error) {
    if (response.headersSent) response.end();
    else sendLine(response, 400, error instanceof Error ? error.message : String(error));
  }
}

/** What the page only reads. */
function given({ fixed, makings, workshop }: Service, { url = '/' }: IncomingMessage, response: ServerResponse): void {
  const path = decodeURIComponent(url.split('?')[0] ?? '/');
  const known = fixed.get(path);
  if (known !== undefined) send(response, known);
  else if (path === '/texts') sendJson(response, marked(workshop.texts()));
  else if (path === '/alive') sendJson(response, { marks: marksOf(workshop.texts().files) } satisfies Alive);
  else if (path === '/news') makings.follow(response);
  else if (path.startsWith('/made/') && makings.isMade(path.slice('/made/'.length))) sendMade(workshop, path.slice('/made/'.length), response);
  else sendLine(response, 404, `${path}: nothing here`);
}

/** What the page asks to be done. */
async function done({ makings, workshop }: Service, request: IncomingMessage, response: ServerResponse): Promise<void> {
  switch (request.url) {
    case '/save':
      sendJson(response, saveValues(workshop, readSaveOrder(await jsonOf(request))));
      return;
    case '/grow':
      sendJson(response, growItem(workshop, readGrowOrder(await jsonOf(request))));
      return;
    case '/make':
      sendJson(response, { begun: makings.begin(readMakeOrder(await jsonOf(request))) });
      return;
    case '/stop':
      makings.stop();
      sendJson(response, {});
      return;
    default:
      sendLine(response, 404, `${request.url ?? ''}: nothing here`);
  }
}

const marked = ({ files, locales }: Pick<ProjectTexts, 'files' | 'locales'>): ProjectTexts =>
  ({ files, locales, marks: marksOf(files) });

const marksOf = (files: ProjectTexts['files']): ProjectTexts['marks'] => Object.fromEntries(Object.entries(files).map(([path, text]) => [path, markOf(text)]));

function sendMade(workshop: Workshop, path: string, response: ServerResponse): void {
  const name = path.split('/').at(-1) ?? 'booklet.pdf';
  const type = name.endsWith('.html') ? 'text/html; charset=utf-8' : 'application/pdf';
  send(response, { type, body: workshop.read(path), headers: { 'Content-Disposition': `attachment; filename*=UTF-8''${encodeURIComponent(name)}` } });
}
