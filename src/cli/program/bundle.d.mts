import type { Import } from './script-of.mjs';

export interface Module {
  readonly name: string;
  readonly text: string;
  readonly imports: readonly Import[];
}

export function bundle(root: string, folder: string, mark: string): Promise<void>;

export function modulesOf(root: string, folder: string, mark: string): Promise<readonly Module[]>;
