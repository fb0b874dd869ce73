/** What the phone remembers of a guide. A phone that lets a file remember nothing loses it when the page is closed. */
export interface Memory {
  readonly page: string;
  /** How often each step is done, by its page. */
  readonly done: Readonly<Record<string, number>>;
  readonly keep: (page: string, done: Readonly<Record<string, number>>) => void;
  /** Choices that hold for all guides on the phone. */
  readonly choice: (name: ChoiceName) => string;
  readonly choose: (name: ChoiceName, value: string) => void;
}

export type ChoiceName = 'language' | 'worded' | 'dark' | 'size';

const CHOICES = 'foldwright/choices/';

/** `name` tells this guide from others: all files of a phone may share one memory. */
export function newMemory(name: string): Memory {
  const key = `foldwright/guide/${name}`;
  const kept = parsed(read(key));
  return {
    page: typeof kept.page === 'string' ? kept.page : '',
    done: counts(kept.done),
    keep: (page, done) => { write(key, JSON.stringify({ page, done })); },
    choice: (choice) => read(CHOICES + choice),
    choose: (choice, value) => { write(CHOICES + choice, value); },
  };
}

function read(key: string): string {
  try {
    return localStorage.getItem(key) || '';
  } catch {
    return '';
  }
}

function write(key: string, value: string): void {
  try {
    localStorage.setItem(key, value);
  } catch {
    // Full or forbidden: the guide works on, and forgets.
  }
}

function parsed(text: string): { readonly page?: unknown; readonly done?: unknown } {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null ? value : {};
  } catch {
    return {};
  }
}

/** Whole numbers over 0 by name; whatever else was stored is left out. */
function counts(value: unknown): Readonly<Record<string, number>> {
  const found: Record<string, number> = {};
  if (typeof value !== 'object' || value === null) return found;
  const stored = value as Readonly<Record<string, unknown>>;
  for (const name of Object.keys(stored)) {
    const count = stored[name];
    if (typeof count === 'number' && count > 0 && count % 1 === 0) found[name] = count;
  }
  return found;
}
