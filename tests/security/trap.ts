import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';

/** A place outside that nothing of ours may ask. */
export interface Trap {
  readonly url: string;
  /** What was asked of it. */
  readonly asked: readonly string[];
  close(): Promise<void>;
}

export async function setTrap(): Promise<Trap> {
  const asked: string[] = [];
  const server = createServer((request, response) => {
    asked.push(`${request.method ?? ''} ${request.url ?? ''}`);
    response.end();
  });
  await new Promise<void>((listening) => { server.listen(0, '127.0.0.1', listening); });
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    asked,
    close: () => new Promise((closed) => {
      server.closeAllConnections();
      server.close(() => { closed(); });
    }),
  };
}

/** Texts that would do something where a text is taken for markup: run a script, leave a style, ask the trap, nest other texts. With blanks, so that they find room on paper. */
export const attacks = ({ url }: Trap): readonly string[] => [
  `<script> fetch( "${url}" ) </script>`,
  `</style> </title> </textarea> <img src="${url}" onerror="hit()" >`,
  `<a href="javascript: fetch( '${url}' )" >&lt;b&gt;</a>`,
  `"'> <svg onload=hit() > ]]>--> $t(page.skip)`,
];
