import type { IncomingMessage, ServerResponse } from 'node:http';

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

const LONGEST_BODY = 100_000;

export interface Answer {
  readonly status?: number;
  readonly type: string;
  readonly body: string | Uint8Array;
  readonly headers?: Readonly<Record<string, string>>;
}

export function send(response: ServerResponse, { status = 200, type, body, headers = {} }: Answer): void {
  response.writeHead(status, { ...HEADERS, 'Content-Type': type, 'Content-Length': Buffer.byteLength(body), ...headers });
  response.end(body);
}

export const sendJson = (response: ServerResponse, value: unknown, status = 200): void => { send(response, { status, type: 'application/json', body: JSON.stringify(value) }); };

/** A plain line: why a request is refused or failed. */
export const sendLine = (response: ServerResponse, status: number, line: string): void => { send(response, { status, type: 'text/plain; charset=utf-8', body: `${line}\n` }); };

/** Begins an answer of server-sent events (HTML standard); each value goes out as one event. */
export function openEvents(response: ServerResponse): (value: unknown) => void {
  response.writeHead(200, { ...HEADERS, 'Content-Type': 'text/event-stream' });
  return (value) => { response.write(`data: ${JSON.stringify(value)}\n\n`); };
}

/** The JSON of a request. Throws where it is none, or too long. */
export async function jsonOf(request: IncomingMessage): Promise<unknown> {
  const pieces: Buffer[] = [];
  let length = 0;
  for await (const piece of request as AsyncIterable<Buffer>) {
    length += piece.length;
    if (length > LONGEST_BODY) throw new RangeError(`a request of more than ${LONGEST_BODY} bytes`);
    pieces.push(piece);
  }
  return JSON.parse(Buffer.concat(pieces).toString('utf8')) as unknown;
}
