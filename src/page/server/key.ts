import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';
import type { IncomingMessage } from 'node:http';

/** The part of the address that holds the key. */
const FIELD = 'key';
/** 192 bits: nobody guesses it. */
const LENGTH = 24;

/** What lets a browser in from elsewhere than this computer alone. It stands in the address once, then in a cookie. */
export interface Key {
  /** The address with the key, for whoever is to come in. */
  inAddress(url: string): string;
  /** Whether the request has the key, and where; `address` is then to be left for the plain one, with `cookie`. */
  heldBy(request: IncomingMessage): 'cookie' | 'address' | 'nowhere';
  /** A header that gives the browser the key to keep until it is closed: no script reads it, no other site's page sends it (RFC 6265). */
  readonly cookie: string;
}

/** A new key for the page at a port: cookies know no ports, so that two pages of one computer must call theirs apart. */
export function newKey(port: number): Key {
  const key = randomBytes(LENGTH).toString('base64url');
  const name = `foldwright-${port}`;
  return {
    inAddress: (url) => `${url}?${FIELD}=${key}`,
    heldBy: ({ headers, url = '' }) => {
      if (cookiesOf(headers.cookie ?? '', name).some((held) => areSame(held, key))) return 'cookie';
      const query = url.startsWith('/?') ? new URLSearchParams(url.slice(2)).get(FIELD) : null;
      return query !== null && areSame(query, key) ? 'address' : 'nowhere';
    },
    cookie: `${name}=${key}; Path=/; HttpOnly; SameSite=Lax`,
  };
}

const cookiesOf = (header: string, name: string): readonly string[] =>
  header.split(';').map((pair) => pair.trim()).filter((pair) => pair.startsWith(`${name}=`)).map((pair) => pair.slice(name.length + 1));

/** Hashes are of one length and take one time to compare: how long it takes tells nothing of the key. */
const areSame = (held: string, key: string): boolean => timingSafeEqual(sha256(held), sha256(key));

const sha256 = (text: string): Buffer => createHash('sha256').update(text).digest();
