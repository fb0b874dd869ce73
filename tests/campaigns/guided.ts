import { damaged } from './damage.ts';
import { take } from './mutations.ts';
import { oneOf, randomOf } from './random.ts';
import { Reached } from './reached.ts';
import { subjects, type Thorough } from './subjects.ts';

/** A text that reached what none before it did. */
interface Kept {
  readonly text: string;
  /** How many damages it is away from the demo's own text. */
  readonly depth: number;
}

export interface GuidedFigures {
  readonly tried: number;
  readonly accepted: number;
  readonly refused: number;
  /** Texts kept since they reached something new, and those of them that grew from another kept one. */
  readonly kept: number;
  readonly deeper: number;
  /** Blocks of our code reached, each by how often. */
  readonly reached: number;
  readonly faults: readonly string[];
}

/**
 * Damages the demo's files as the mutation campaign does, led by coverage: what reaches code that nothing before it
 * reached is kept and damaged further. The method is that of coverage-guided greybox fuzzing (Böhme, Pham and
 * Roychoudhury, 2016; the three steps of oftenness are ours).
 */
export function guidedCampaign(count: number, seed: number, tell: (line: string) => void = () => undefined, thorough: Thorough = 'one size'): Promise<GuidedFigures> {
  const random = randomOf(seed);
  const all = subjects(thorough).map((subject) => ({ subject, corpus: [{ text: subject.text, depth: 0 }] as Kept[] }));
  const found = { accepted: 0, refused: 0, kept: 0, deeper: 0 };
  const faults = new Set<string>();
  const reached = new Reached();
  try {
    for (const { subject } of all) subject.read(subject.text);
    reached.more();
    for (let index = 0; index < count; index++) {
      const { subject, corpus } = all[index % all.length] ?? oneOf(random, all);
      const parent = oneOf(random, corpus);
      const text = damaged(random, parent.text);
      const { how, why } = take(subject, text);
      if (how === 'accepted' || how === 'refused') found[how]++;
      if (how === 'escaped' && !faults.has(why)) {
        faults.add(why);
        tell(`${index} ${subject.path}: ${why}`);
      }
      if (reached.more() > 0) {
        corpus.push({ text, depth: parent.depth + 1 });
        found.kept++;
        if (parent.depth > 0) found.deeper++;
      }
      if (index % 500 === 499) tell(`${index + 1} tried, ${found.kept} kept, ${reached.size} reached`);
    }
    return Promise.resolve({ tried: count, ...found, reached: reached.size, faults: [...faults] });
  } finally {
    reached.end();
  }
}
