import type { IncomingMessage } from 'node:http';

/** Why a request is not answered, or null when it may be. */
export type Guard = (request: IncomingMessage) => string | null;

/**
 * Lets in only requests that were meant for this page.
 * - A foreign `Host` is refused: a foreign name that was made to lead here (DNS rebinding) would otherwise count as the
 *   page's own origin for the browser.
 * - What another site's page asks for is refused (Fetch Metadata, W3C), but for going to the page by a link.
 * - A writing request must say by `Origin` that it comes from the page (RFC 6454), and must be JSON, which no plain
 *   form of another site can send.
 * `hosts` are the names and addresses the page is reached by, without the port.
 */
export function newGuard(hosts: readonly string[], port: number): Guard {
  const known = new Set(hosts.flatMap((host) => (port === 80 ? [host, `${host}:80`] : [`${host}:${port}`])));
  return (request) => {
    const host = request.headers.host?.toLowerCase() ?? '';
    if (!known.has(host)) return `Host: found "${host}", would be right: one of ${[...known].join(', ')}`;
    if (isFromElsewhere(request)) return 'another site asks; would be right: the page itself';
    if (request.method === 'GET' || request.method === 'HEAD') return null;
    if (request.headers.origin !== `http://${host}`) return `Origin: found "${request.headers.origin ?? ''}", would be right: http://${host}`;
    return request.headers['content-type'] === 'application/json' ? null : 'Content-Type: would be right: application/json';
  };
}

function isFromElsewhere({ headers, method, url }: IncomingMessage): boolean {
  const site = headers['sec-fetch-site'];
  if (site === undefined || site === 'same-origin' || site === 'none') return false;
  const byLink = method === 'GET' && (url === '/' || url?.startsWith('/?') === true) && headers['sec-fetch-mode'] === 'navigate' && headers['sec-fetch-dest'] === 'document';
  return !byLink;
}
