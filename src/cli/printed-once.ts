import type { Sharing } from '../booklet/index.ts';

/** Gives what copies share, made for the first that needs it. */
export interface PrintedOnce<Printed> {
  /** For one of the copies: what was made for another of them, else what `print` makes. */
  readonly of: (sharing: Sharing | null, print: () => Promise<Printed>) => Promise<Printed>;
  /** Hears that a copy is done, whether it needed it or not: after the last it is let go. */
  readonly done: (sharing: Sharing | null) => void;
}

export function newPrintedOnce<Printed>(): PrintedOnce<Printed> {
  const known = new Map<Sharing, { left: number; printed: Promise<Printed> | null }>();
  const of = (sharing: Sharing): { left: number; printed: Promise<Printed> | null } => {
    const found = known.get(sharing) ?? { left: sharing.copies.length, printed: null };
    known.set(sharing, found);
    return found;
  };
  return {
    of: (sharing, print) => (sharing === null ? print() : (of(sharing).printed ??= print())),
    done: (sharing) => {
      if (sharing === null) return;
      const found = of(sharing);
      found.left -= 1;
      if (found.left === 0) known.delete(sharing);
    },
  };
}
