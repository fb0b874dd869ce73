/** Which booklets: names of everything that is ticked. Sizes as `item/size`. */
export interface Wish {
  readonly sizes: ReadonlySet<string>;
  readonly langs: ReadonlySet<string>;
  /** All languages ticked in one booklet, in the order they were ticked in. */
  readonly beside: boolean;
  readonly editions: ReadonlySet<string>;
  readonly papers: ReadonlySet<string>;
  readonly learners: number;
  readonly stitched: boolean;
  readonly despiteFindings: boolean;
}

const KEPT = 'foldwright.wish';

interface Offered {
  readonly item: string;
  readonly sizes: readonly string[];
}

/** What was ticked when the page was last open, as far as it is still there. */
export function keptWish(lang: string, items: readonly Offered[]): Wish {
  const usual: Wish = { sizes: new Set(), langs: new Set([lang]), beside: false, editions: new Set(['words']), papers: new Set(['a4']), learners: 12, stitched: false, despiteFindings: false };
  const kept = parsed(localStorage.getItem(KEPT));
  if (kept === null) return usual;
  const offered = new Set(items.flatMap(({ item, sizes }) => sizes.map((size) => `${item}/${size}`)));
  const names = (value: unknown): ReadonlySet<string> | null => (Array.isArray(value) ? new Set(value.filter((each) => typeof each === 'string')) : null);
  return {
    ...usual,
    sizes: new Set([...names(kept['sizes']) ?? []].filter((size) => offered.has(size))),
    langs: names(kept['langs']) ?? usual.langs,
    editions: names(kept['editions']) ?? usual.editions,
    papers: names(kept['papers']) ?? usual.papers,
    learners: typeof kept['learners'] === 'number' && kept['learners'] >= 1 && kept['learners'] <= 200 ? Math.round(kept['learners']) : usual.learners,
    beside: kept['beside'] === true,
    stitched: kept['stitched'] === true,
  };
}

/** To print although a check fails is asked for anew each time. */
export function keepWish({ sizes, langs, editions, papers, learners, beside, stitched }: Wish): void {
  localStorage.setItem(KEPT, JSON.stringify({ sizes: [...sizes], langs: [...langs], editions: [...editions], papers: [...papers], learners, beside, stitched }));
}

function parsed(text: string | null): Readonly<Record<string, unknown>> | null {
  try {
    const value: unknown = JSON.parse(text ?? 'null');
    return typeof value === 'object' ? value as Readonly<Record<string, unknown>> | null : null;
  } catch {
    return null; // not ours
  }
}
