import { isIPv6 } from 'node:net';
import { networkInterfaces } from 'node:os';

const LOOPBACK = ['127.0.0.1', 'localhost', '[::1]'];

/** Whether only this computer reaches an address. */
export const isLoopback = (host: string): boolean => host === 'localhost' || host === '::1' || /^127\./.test(host);

/** The names and addresses by which a browser may ask for a page that listens on `host`, as they stand in a URL. */
export function namesOf(host: string): readonly string[] {
  const everywhere = host === '0.0.0.0' || host === '::';
  const own = everywhere ? Object.values(networkInterfaces()).flatMap((all) => all?.map(({ address }) => address) ?? []) : [host];
  return [...new Set([...(everywhere || isLoopback(host) ? LOOPBACK : []), ...own.map(inUrl)])];
}

/** An address as a URL writes it: IPv6 in brackets. */
export const inUrl = (host: string): string => (isIPv6(host) ? `[${host}]` : host.toLowerCase());
