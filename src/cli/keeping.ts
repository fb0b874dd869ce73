import { fileURLToPath } from 'node:url';
import { codeMark, keepFolder, keepLimit, nothingKept, openKeep, type Keep } from '../keep/index.ts';
import { bundled } from './bundled.ts';

export interface KeepOptions {
  /** Folder of what is kept; false keeps nothing, true and left out leave it to the variable and the user's cache folder. */
  readonly cache?: string | boolean;
}

const root = fileURLToPath(new URL('../../', import.meta.url));

/** A hash of the code that runs. */
export const ownCode = (): string => bundled?.mark ?? codeMark(root);

/** What earlier builds by this very code have made, where it is to be used. */
export function keepAsked({ cache }: KeepOptions): Keep {
  const folder = keepFolder(cache, process.env);
  return folder === null ? nothingKept : openKeep({ folder, code: ownCode(), limit: keepLimit(process.env) });
}
