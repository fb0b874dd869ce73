import { readNotes, type PackItem } from '../booklet/index.ts';
import type { Solids } from '../model/index.ts';
import { planItem, type Plan } from '../plan/index.ts';
import { filesOnDisk, type Item } from '../read/index.ts';
import { sizesOf } from './project.ts';
import { checkedSize } from './sound.ts';

/** The language whose notes stand in where an item has none in the one asked for. */
const fallback = 'en';

/**
 * The notes of an item in a language, or in English where there are none, or null where there are none at all.
 * Headings may name the steps of any of the item's sizes. Throws a FaultError for a heading that names none.
 */
export function notesFor(item: Item, plan: Plan, lang: string, solids: Solids): PackItem['notes'] {
  const files = filesOnDisk('.');
  for (const each of [...new Set([lang, fallback])]) {
    const path = `steps/${item.name}/notes/${each}.md`;
    const text = files.text(path);
    if (text !== null) return { lang: each, notes: readNotes(path, text, headingsOf(item, plan, solids)) };
  }
  return null;
}

/** Keys and actions of the steps of all sizes; the other sizes are planned only where the one at hand lacks a name. */
function headingsOf(item: Item, plan: Plan, solids: Solids): Parameters<typeof readNotes>[2] {
  const own = new Set(namesIn(plan));
  let every: ReadonlySet<string> | null = null;
  const all = (): ReadonlySet<string> => (every ??= new Set([...own, ...sizesOf(item).flatMap((size) => namesIn(planOf(item, size, solids)))]));
  return { has: (name) => own.has(name) || all().has(name), [Symbol.iterator]: () => all()[Symbol.iterator]() };
}

function planOf(item: Item, size: string, solids: Solids): Plan {
  const { model, report } = checkedSize(item, size);
  return planItem(model, item.order, solids, report.advice.wall);
}

const namesIn = ({ steps }: Plan): readonly string[] => [...steps.map(({ action }) => action), ...steps.map(({ key }) => key)];
