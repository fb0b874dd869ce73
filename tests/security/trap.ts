import { writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { chooseBrowser } from '../../src/booklet/print/chooseBrowser.ts';

/** A place outside that nothing of ours may ask, which is also a proxy: it hears of whatever else is asked through it. */
export interface Trap {
  readonly url: string;
  /** What was asked of it. */
  readonly asked: readonly string[];
  forget(): void;
  close(): Promise<void>;
}

export async function setTrap(): Promise<Trap> {
  const asked: string[] = [];
  const server = createServer((request, response) => {
    asked.push(`${request.method ?? ''} ${request.url ?? ''}`);
    response.end();
  });
  server.on('connect', ({ url = '' }, socket) => {
    asked.push(`CONNECT ${url}`);
    socket.end();
  });
  await new Promise<void>((listening) => { server.listen(0, '127.0.0.1', listening); });
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    asked,
    forget: () => { asked.length = 0; },
    close: () => new Promise((closed) => {
      server.closeAllConnections();
      server.close(() => { closed(); });
    }),
  };
}

/** Writes a program that starts the browser that prints with the trap as its proxy, for this computer's own addresses too. */
export async function browserThrough({ url }: Trap, path: string): Promise<void> {
  const { path: program, env } = await chooseBrowser();
  const quoted = (text: string): string => `'${text.replaceAll("'", "'\\''")}'`;
  const own = ['FONTCONFIG_FILE', 'LD_LIBRARY_PATH'].flatMap((name) => (env[name] === undefined ? [] : [`export ${name}=${quoted(env[name])}`]));
  writeFileSync(path, ['#!/bin/sh', ...own, `exec ${quoted(program)} --proxy-server=${new URL(url).host} '--proxy-bypass-list=<-loopback>' "$@"`, ''].join('\n'), { mode: 0o755 });
}

/** Texts that would do something where a text is taken for markup: run a script, leave a style, ask the trap, nest other texts. With blanks, so that they find room on paper. */
export const attacks = ({ url }: Trap): readonly string[] => [
  `<script> fetch( "${url}" ) </script>`,
  `</style> </title> </textarea> <img src="${url}" onerror="hit()" >`,
  `<a href="javascript: fetch( '${url}' )" >&lt;b&gt;</a>`,
  `"'> <svg onload=hit() > ]]>--> $t(page.skip)`,
];
