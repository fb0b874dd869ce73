import type { Telling } from './types.ts';

/** A text in every language, by its number, and as the first language has it. */
export interface Phrase {
  readonly number: number;
  readonly text: string;
}

/** Says something in the language of a telling. */
export type Saying = (telling: Telling) => string;

/** Collects what the page says, so that the browser can say it in another language. */
export interface PhraseBook {
  /** The same number for texts that are the same in every language. */
  readonly say: (saying: Saying) => Phrase;
  /** For each language its texts by number. */
  readonly texts: () => readonly (readonly string[])[];
}

export function phraseBook(tellings: readonly Telling[]): PhraseBook {
  const numbers = new Map<string, number>();
  const texts: string[][] = tellings.map(() => []);
  return {
    say: (saying) => {
      const said = tellings.map(saying);
      const key = JSON.stringify(said);
      const known = numbers.get(key);
      const number = known ?? numbers.size;
      if (known === undefined) {
        numbers.set(key, number);
        said.forEach((text, index) => texts[index]?.push(text));
      }
      return { number, text: said[0] ?? '' };
    },
    texts: () => texts,
  };
}
