import { createHash } from 'node:crypto';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { packed, takesGzip } from './packing.ts';
import { send, type Answer } from './respond.ts';

/**
 * What stays the same while the program runs: scripts, style, programs and fonts. A browser keeps it, asks each time
 * whether it still holds, and is not sent it again while it does (RFC 9110, 8.8.3 and 13.1.2; RFC 9111, 5.2.2.4).
 */
export interface FixedAnswers {
  /** False where nothing has that path. */
  readonly give: (path: string, request: IncomingMessage, response: ServerResponse) => Promise<boolean>;
}

export function newFixedAnswers(answers: ReadonlyMap<string, Answer>): FixedAnswers {
  const kept = new Map([...answers].map(([path, { body, ...rest }]) => [path, { ...rest, body, headers: {
    ...rest.headers, 'Cache-Control': 'private, no-cache', 'Vary': 'Accept-Encoding', 'ETag': `W/"${createHash('sha256').update(body).digest('base64url')}"`,
  } }]));
  /** Packed when they are first asked for. */
  const packedOnes = new Map<string, Promise<Answer>>();
  return {
    give: async (path, request, response) => {
      const answer = kept.get(path);
      if (answer === undefined) return false;
      const held = String(request.headers['if-none-match'] ?? '').split(',').map((tag) => tag.trim());
      if (held.includes(answer.headers.ETag)) {
        send(response, { ...answer, status: 304, body: '' });
        return true;
      }
      if (takesGzip(request) && !packedOnes.has(path)) packedOnes.set(path, packed(answer));
      send(response, (takesGzip(request) ? await packedOnes.get(path) : undefined) ?? answer);
      return true;
    },
  };
}
