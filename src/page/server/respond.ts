import type { IncomingMessage, ServerResponse } from 'node:http';
import { LIMITS } from './limits.ts';

/** What a browser is told about every answer. Scripts, styles and fonts come from here alone; nothing may frame the page. */
const HEADERS: Readonly<Record<string, string>> = {
  'Content-Security-Policy': [
    "default-src 'none'", "script-src 'self' 'wasm-unsafe-eval'", "worker-src 'self'", "style-src 'self' 'unsafe-inline'", "font-src 'self'",
    "img-src 'self' data:", "connect-src 'self'", "frame-src 'self'", "base-uri 'none'", "form-action 'none'", "frame-ancestors 'self'",
  ].join('; '),
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Referrer-Policy': 'no-referrer',
  'X-Content-Type-Options': 'nosniff',
  'Cache-Control': 'no-store',
};

/** A request that is refused, with the status that says why (RFC 9110). */
export class Refused extends Error {
  readonly status: number;
  constructor(status: number, told: string) {
    super(told);
    this.status = status;
  }
}

export interface Answer {
  readonly status?: number;
  readonly type: string;
  readonly body: string | Uint8Array;
  readonly headers?: Readonly<Record<string, string>>;
}

export function send(response: ServerResponse, { status = 200, type, body, headers = {} }: Answer): void {
  // The length of an answer that the browser has already would be that of the whole one (RFC 9110, 8.6).
  response.writeHead(status, { ...HEADERS, 'Content-Type': type, ...(status === 304 ? {} : { 'Content-Length': Buffer.byteLength(body) }), ...headers });
  response.end(body);
}

export const jsonAnswer = (value: unknown): Answer => ({ type: 'application/json', body: JSON.stringify(value) });

export const sendJson = (response: ServerResponse, value: unknown): void => { send(response, jsonAnswer(value)); };

/** A plain line: why a request is refused or failed. */
export const sendLine = (response: ServerResponse, status: number, line: string): void => { send(response, { status, type: 'text/plain; charset=utf-8', body: `${line}\n` }); };

/** Begins an answer of server-sent events (HTML standard); each value goes out as one event. One who does not read them is left. */
export function openEvents(response: ServerResponse): (value: unknown) => void {
  response.writeHead(200, { ...HEADERS, 'Content-Type': 'text/event-stream' });
  response.socket?.setTimeout(0);
  return (value) => {
    response.write(`data: ${JSON.stringify(value)}\n\n`);
    if (response.writableLength > LIMITS.waiting) response.destroy();
  };
}

/** The JSON of a request. Throws where it is none, or too long: then no more of it is read. */
export async function jsonOf(request: IncomingMessage): Promise<unknown> {
  const pieces: Buffer[] = [];
  let length = Number(request.headers['content-length'] ?? 0);
  if (length > LIMITS.body) throw tooLong();
  length = 0;
  for await (const piece of request.iterator({ destroyOnReturn: false }) as AsyncIterable<Buffer>) {
    length += piece.length;
    if (length > LIMITS.body) throw tooLong();
    pieces.push(piece);
  }
  return JSON.parse(Buffer.concat(pieces).toString('utf8')) as unknown;
}

const tooLong = (): Refused => new Refused(413, `found a request of more than ${LIMITS.body} bytes; would be right: a shorter one`);
