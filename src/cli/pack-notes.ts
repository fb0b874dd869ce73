import { readNotes, type PackItem } from '../booklet/index.ts';
import { buildModel } from '../model/index.ts';
import { stepNames } from '../plan/index.ts';
import { filesOnDisk, type Item } from '../read/index.ts';
import { sizesOf } from './project.ts';

/** The language whose notes stand in where an item has none in the one asked for. */
const fallback = 'en';

/**
 * The notes of an item in a language, or in English where there are none, or null where there are none at all.
 * Headings may name the steps of any of the item's sizes. Throws a FaultError for a heading that names none.
 */
export function notesFor(item: Item, lang: string): PackItem['notes'] {
  const files = filesOnDisk('.');
  for (const each of [...new Set([lang, fallback])]) {
    const path = `steps/${item.name}/notes/${each}.md`;
    const text = files.text(path);
    if (text !== null) return { lang: each, notes: readNotes(path, text, headingsOf(item)) };
  }
  return null;
}

/** Keys and actions of the steps of all sizes. */
function headingsOf(item: Item): ReadonlySet<string> {
  const steps = sizesOf(item).flatMap((size) => stepNames(buildModel(item, size)));
  return new Set<string>([...steps.map(({ action }) => action), ...steps.map(({ key }) => key)]);
}
