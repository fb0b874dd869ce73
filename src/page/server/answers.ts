import type { IncomingMessage, ServerResponse } from 'node:http';
import type { Alive, ProjectTexts } from '../types.ts';
import type { FixedAnswers } from './fixed-answers.ts';
import { growItem, readGrowOrder } from './grow.ts';
import type { Guard } from './guard.ts';
import type { Key } from './key.ts';
import type { Makings } from './makings.ts';
import { readMakeOrder, readSaveOrder } from './orders.ts';
import { packed, takesGzip } from './packing.ts';
import { jsonAnswer, jsonOf, Refused, send, sendJson, sendLine } from './respond.ts';
import { markOf, saveValues } from './save.ts';
import type { Workshop } from './workshop.ts';

/** What answers are made from. */
export interface Service {
  readonly fixed: FixedAnswers;
  readonly guard: Guard;
  /** Null where only this computer reaches the page. */
  readonly key: Key | null;
  readonly mayChange: boolean;
  readonly makings: Makings;
  readonly workshop: Workshop;
}

/** Answers a request that is meant for the page and has its key; others get one line that tells why not. */
export async function answer(service: Service, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const refusal = service.guard(request);
  if (refusal !== null) {
    sendLine(response, 403, refusal);
    return;
  }
  const held = service.key?.heldBy(request) ?? 'cookie';
  if (held === 'nowhere') sendLine(response, 403, 'no key, or not the one of this page; would be right: the whole address as the program printed it');
  // From here on the browser keeps the key: neither the address bar nor what is copied from it shows it.
  else if (held === 'address') send(response, { status: 303, type: 'text/plain; charset=utf-8', body: '', headers: { Location: '/', 'Set-Cookie': service.key?.cookie ?? '' } });
  else await answerKnown(service, request, response);
}

async function answerKnown(service: Service, request: IncomingMessage, response: ServerResponse): Promise<void> {
  try {
    if (request.method === 'POST') await done(service, request, response);
    else if (request.method === 'GET' || request.method === 'HEAD') await given(service, request, response);
    else throw new Refused(405, `${request.method ?? ''}: would be right: GET, HEAD or POST`);
  } catch (error) {
    if (response.headersSent) response.end();
    // What is left of a request that is refused is not read: the connection ends with it.
    else sendLine(response.setHeader('Connection', 'close'), error instanceof Refused ? error.status : 400, error instanceof Error ? error.message : String(error));
  }
}

/** What the page only reads. */
async function given({ fixed, makings, mayChange, workshop }: Service, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const path = decodeURIComponent((request.url ?? '/').split('?')[0] ?? '/');
  if (await fixed.give(path, request, response)) return;
  if (path === '/texts') await sendTexts({ ...marked(workshop.texts()), mayChange }, request, response);
  else if (path === '/alive') sendJson(response, { marks: marksOf(workshop.texts().files), begun: makings.begun() } satisfies Alive);
  else if (path === '/news') makings.follow(response);
  else if (path.startsWith('/made/') && makings.isMade(path.slice('/made/'.length))) sendMade(workshop, path.slice('/made/'.length), response);
  else sendLine(response, 404, `${path}: nothing here`);
}

/** What the page asks to be done. */
async function done({ makings, mayChange, workshop }: Service, request: IncomingMessage, response: ServerResponse): Promise<void> {
  if (!mayChange) throw new Refused(403, 'this page is only to be looked at; would be right: the program started with --allow-changes');
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

const marked = ({ files, locales }: Pick<ProjectTexts, 'files' | 'locales'>): Omit<ProjectTexts, 'mayChange'> =>
  ({ files, locales, marks: marksOf(files) });

const marksOf = (files: ProjectTexts['files']): ProjectTexts['marks'] => Object.fromEntries(Object.entries(files).map(([path, text]) => [path, markOf(text)]));

async function sendTexts(texts: ProjectTexts, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const answer = { ...jsonAnswer(texts), headers: { Vary: 'Accept-Encoding' } };
  send(response, takesGzip(request) ? await packed(answer) : answer);
}

function sendMade(workshop: Workshop, path: string, response: ServerResponse): void {
  const name = path.split('/').at(-1) ?? 'booklet.pdf';
  const type = name.endsWith('.html') ? 'text/html; charset=utf-8' : 'application/pdf';
  send(response, { type, body: workshop.read(path), headers: { 'Content-Disposition': `attachment; filename*=UTF-8''${encodeURIComponent(name)}` } });
}
