import { Session, type Profiler } from 'node:inspector';

/**
 * What of our own code something reaches, as V8 counts it (precise coverage by blocks, of the inspector's protocol).
 * A block that runs once, a few times or often counts as three: a loop gone round more often is another way through.
 */
export class Reached {
  private readonly session = new Session();
  private readonly seen = new Set<string>();

  constructor() {
    this.session.connect();
    this.session.post('Profiler.enable');
    this.session.post('Profiler.startPreciseCoverage', { callCount: true, detailed: true });
  }

  /** How many blocks were reached so far, each by how often. */
  get size(): number {
    return this.seen.size;
  }

  /** Takes what was reached since the last call; gives how much of it never was before. */
  more(): number {
    const before = this.seen.size;
    for (const { url, functions } of this.taken()) {
      if (!/\/src\/.*\.tsx?$/.test(url)) continue;
      for (const { ranges } of functions) for (const range of ranges) if (range.count > 0) this.seen.add(`${url} ${range.startOffset} ${range.endOffset} ${oftenness(range.count)}`);
    }
    return this.seen.size - before;
  }

  end(): void {
    this.session.post('Profiler.stopPreciseCoverage');
    this.session.disconnect();
  }

  // The inspector answers within the call when it looks at its own thread.
  private taken(): readonly Profiler.ScriptCoverage[] {
    let scripts: readonly Profiler.ScriptCoverage[] | null = null;
    this.session.post('Profiler.takePreciseCoverage', (error, answer) => {
      if (error !== null) throw error;
      scripts = answer.result;
    });
    if (scripts === null) throw new Error('the inspector gave no coverage');
    return scripts;
  }
}

const oftenness = (count: number): number => (count === 1 ? 1 : count < 16 ? 2 : 3);
