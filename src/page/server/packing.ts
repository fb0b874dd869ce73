import type { IncomingMessage } from 'node:http';
import { promisify } from 'node:util';
import { constants, gzip } from 'node:zlib';
import type { Answer } from './respond.ts';

/** Whether a browser takes answers packed by gzip (RFC 9110, 12.5.3). */
export const takesGzip = ({ headers }: Pick<IncomingMessage, 'headers'>): boolean =>
  String(headers['accept-encoding'] ?? '').split(',').some((each) => /^\s*gzip\s*(;\s*q=(?!0(\.0*)?\s*$).*)?$/i.test(each));

/** The same answer, packed. Quickly: the tightest packing would save an eighth more and take twice as long. Fonts are packed already. */
export async function packed(answer: Answer): Promise<Answer> {
  if (answer.type.startsWith('font/')) return answer;
  return { ...answer, body: await promisify(gzip)(answer.body, { level: constants.Z_BEST_SPEED }), headers: { ...answer.headers, 'Content-Encoding': 'gzip' } };
}
