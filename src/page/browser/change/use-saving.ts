import { useCallback, useEffect, useMemo, useRef } from 'react';
import type { ProjectTexts, SaveAnswer } from '../../types.ts';
import { askSave } from '../asking.ts';
import { itemOrTold } from './item-or-told.ts';
import { draftOf, type Changes, type Place } from './use-changes.ts';
import { textsOf, type Draft } from './values.ts';

/** A size with values that its file does not have. */
export interface Unsaved extends Place {
  readonly item: string;
  readonly draft: Draft;
}

export interface SavingHook {
  readonly unsaved: readonly Unsaved[];
  /** Writes what is changed of one size into its file. Throws where the program does not answer. */
  readonly save: (place: Place) => Promise<SaveAnswer>;
  /** Takes a file's new text, as the program told it. */
  readonly take: (path: string, text: string, mark: string) => void;
}

interface Given {
  readonly texts: ProjectTexts;
  readonly changes: Changes;
  readonly onTexts: (texts: ProjectTexts) => void;
  readonly onSaved: (place: Place) => void;
}

/** What is changed and not in the files, and how it gets there. */
export function useSaving({ texts, changes, onTexts, onSaved }: Given): SavingHook {
  // Sizes are saved one after the other: each must see the file as the one before has left it.
  const latest = useRef(texts);
  useEffect(() => { latest.current = texts; }, [texts]);
  const unsaved = useMemo(() => unsavedIn(texts, changes), [texts, changes]);
  const take = useCallback((path: string, text: string, mark: string): void => {
    const { files, marks } = latest.current;
    latest.current = { ...latest.current, files: { ...files, [path]: text }, marks: { ...marks, [path]: mark } };
    onTexts(latest.current);
  }, [onTexts]);
  const save = useCallback(async ({ path, size }: Place): Promise<SaveAnswer> => {
    const draft = unsaved.find((each) => each.path === path && each.size === size)?.draft ?? {};
    const answer = await askSave({ path, size, values: textsOf(draft), mark: latest.current.marks[path] ?? '' });
    if (answer.saved) {
      take(path, answer.text, answer.mark);
      onSaved({ path, size });
    }
    return answer;
  }, [unsaved, take, onSaved]);
  return { unsaved, save, take };
}

function unsavedIn(texts: ProjectTexts, changes: Changes): readonly Unsaved[] {
  const places = new Map(changes.past.map(({ path, size }) => [`${path} ${size}`, { path, size }]));
  for (const { path, size } of changes.undone) places.set(`${path} ${size}`, { path, size });
  return [...places.values()].flatMap((place): readonly Unsaved[] => {
    const read = itemOrTold(texts, place.path);
    if (typeof read === 'string' || !read.sizes.some(({ name }) => name === place.size)) return [];
    const draft = draftOf(changes, read, place);
    return Object.keys(draft).length === 0 ? [] : [{ ...place, item: read.name, draft }];
  });
}
