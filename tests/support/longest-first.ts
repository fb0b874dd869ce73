import { readFileSync } from 'node:fs';
import { relative } from 'node:path';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** How long each of the long files took, s, as `write-seconds.ts` has noted it. */
const seconds = JSON.parse(readFileSync(new URL('seconds.json', import.meta.url), 'utf8')) as Readonly<Record<string, number>>;

/** Starts the files that take longest first, so that no worker waits long for the other, on a machine that has run none of them yet too. */
export default class LongestFirst extends BaseSequencer {
  override sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const taken = ({ moduleId }: TestSpecification): number => seconds[relative(this.ctx.config.root, moduleId)] ?? 0;
    return Promise.resolve(files.toSorted((a, b) => taken(b) - taken(a) || (a.moduleId < b.moduleId ? -1 : 1)));
  }
}
