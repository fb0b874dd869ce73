import { createHash } from 'node:crypto';
import { fontCss } from '../../booklet/index.ts';
import type { Answer } from './respond.ts';

/** The booklets' fonts for a page: a style sheet that names each font file, so that a browser loads only those it needs. */
export function fontAnswers(langs: readonly string[]): ReadonlyMap<string, Answer> {
  const files = new Map<string, Answer>();
  const css = fontCss(langs).replaceAll(/url\(data:font\/woff2;base64,([^)]+)\)/g, (_, base64: string) => {
    const body = Buffer.from(base64, 'base64');
    const path = `/fonts/${createHash('sha256').update(body).digest('hex').slice(0, 16)}.woff2`;
    files.set(path, { type: 'font/woff2', body });
    return `url(${path})`;
  });
  return new Map([['/fonts.css', { type: 'text/css; charset=utf-8', body: css }], ...files]);
}
