import { nothingKept, readData, writeData, type Keep } from '../keep/index.ts';

/** The marks that a size was printed with in this folder: the last, and which each replaced when it was new. */
interface Prints {
  readonly last: string;
  readonly replaced: Readonly<Record<string, string | null>>;
}

/** Whatever the code: a print stays a print. */
const keyOf = (item: string, size: string): string => nothingKept.key('prints', process.cwd(), item, size);

/** The mark of the print that one with this mark replaces, as far as it is kept; the same whenever it is asked. */
export function replacedBy(keep: Keep, item: string, size: string, mark: string): string | null {
  return replacedIn(readData<Prints>(keep, keyOf(item, size)), mark);
}

function replacedIn(prints: Prints | null, mark: string): string | null {
  if (prints === null) return null;
  const replaced = prints.replaced[mark];
  return replaced === undefined ? prints.last : replaced;
}

/** Keeps that a size was printed with this mark. */
export function keepPrinted(keep: Keep, item: string, size: string, mark: string): void {
  const prints = readData<Prints>(keep, keyOf(item, size));
  if (prints?.last === mark) return;
  writeData(keep, keyOf(item, size), { last: mark, replaced: { ...prints?.replaced, [mark]: replacedIn(prints, mark) } } satisfies Prints);
}
