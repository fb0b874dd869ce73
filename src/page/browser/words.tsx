import { createContext, useContext } from 'react';
import { isolate, type Words } from '../../booklet/index.ts';
import type { Parameter } from '../../read/index.ts';

/** The first of the reader's languages that the page speaks, by its whole tag before its first part, or English. */
export function chosenLanguage(known: readonly string[], wished: readonly string[]): string {
  const tags = wished.flatMap((tag) => [tag, tag.split('-')[0] ?? tag]);
  return tags.find((lang) => known.includes(lang)) ?? (known.includes('en') ? 'en' : known[0] ?? 'en');
}

export const WordsContext = createContext<Words | null>(null);

export function useWords(): Words {
  const words = useContext(WordsContext);
  if (words === null) throw new Error('no words round this part of the page');
  return words;
}

/** A name that an author may not have translated yet, or what it is called in the file. */
export function nameOr(words: Words, key: string, otherwise: string): string {
  try {
    return words.t(key);
  } catch {
    return otherwise;
  }
}

/** What the reader is told of an item's parameter. */
export interface ParameterWords {
  readonly label: string;
  /** Its measures and standards stand between isolates. */
  readonly purpose: string;
  /** Whether the words are the item file's own English, because no locale file has any. */
  readonly fromFile: boolean;
}

/** A parameter's label and purpose in the reader's language, or as the item's file has them. */
export function parameterWords(words: Words, item: string, { name, purpose }: Pick<Parameter, 'name' | 'purpose'>): ParameterWords {
  const key = `parameters.${item}.${name}`;
  const label = nameOr(words, `${key}.label`, '');
  const said = nameOr(words, `${key}.purpose`, '').replaceAll(/\d+ mm|EN \d+-\d+/g, isolate);
  return label === '' || said === '' ? { label: name, purpose, fromFile: true } : { label, purpose: said, fromFile: false };
}

/** A parameter's name in the reader's language, or as it is in the file. */
export const parameterLabel = (words: Words, item: string, name: string): string => nameOr(words, `parameters.${item}.${name}.label`, name);

export const itemName = (words: Words, item: string): string => nameOr(words, `items.${item}.name`, item);
export const sizeName = (words: Words, item: string, size: string): string => nameOr(words, `items.${item}.sizes.${size}`, size);
