import { useEffect, useMemo, useRef, useState, type ReactNode } from 'react';
import { listItems, readItem, filesInMemory, FaultError, faultLine, type Item } from '../../../read/index.ts';
import type { ProjectTexts, SaveAnswer } from '../../types.ts';
import { askSave } from '../asking.ts';
import { itemName, sizeName, useWords } from '../words.tsx';
import type { Subject } from '../workers/messages.ts';
import { Bench } from './bench.tsx';
import { Saving } from './saving.tsx';
import { textsOf, withValue, type Draft } from './values.ts';

interface ChangingProps {
  readonly texts: ProjectTexts;
  readonly onTexts: (texts: ProjectTexts) => void;
  readonly onRead: () => Promise<void>;
}

const NO_DRAFT: Draft = {};
const KEPT_ITEM = 'foldwright.item';

/** Choose an item and a size, change its measures, see what comes of it, and save. */
export function Changing({ texts, onTexts, onRead }: ChangingProps): ReactNode {
  const words = useWords();
  const paths = useMemo(() => listItems(filesInMemory(texts.files)), [texts]);
  const [path, setPath] = useState(() => paths.find((each) => each === localStorage.getItem(KEPT_ITEM)) ?? paths[0] ?? '');
  const [sizes, setSizes] = useState<Readonly<Record<string, string>>>({});
  const [drafts, setDrafts] = useState<Readonly<Record<string, Draft>>>({});
  const read = useMemo(() => itemOrTold(texts, path), [texts, path]);
  const item = typeof read === 'string' ? null : read;
  const size = item === null ? '' : sizes[path] ?? item.sizes[1]?.name ?? item.sizes[0]?.name ?? '';
  const key = `${path} ${size}`;
  const draft = drafts[key] ?? NO_DRAFT;
  const subject = useSubject(item === null ? null : texts, path, size, draft);
  useEffect(() => { localStorage.setItem(KEPT_ITEM, path); }, [path]);
  useLeaving(Object.values(drafts).some((each) => Object.keys(each).length > 0));
  const setDraft = (next: Draft): void => { setDrafts((before) => ({ ...before, [key]: next })); };

  const save = async (): Promise<SaveAnswer> => {
    const answer = await askSave({ path, size, values: textsOf(draft), mark: texts.marks[path] ?? '' });
    if (answer.saved) {
      setDraft(NO_DRAFT);
      onTexts({ ...texts, files: { ...texts.files, [path]: answer.text }, marks: { ...texts.marks, [path]: answer.mark } });
    }
    return answer;
  };
  const readAgain = async (): Promise<void> => {
    await onRead();
    setDrafts({});
  };

  const pickers = (
    <div className="pickers">
      <label>{words.t('page.change.item')}
        <select value={path} onChange={(event) => { setPath(event.target.value); }}>
          {paths.map((each) => <option key={each} value={each}>{itemName(words, folderOf(each))}</option>)}
        </select>
      </label>
      <label>{words.t('page.change.size')}
        <select value={size} disabled={item === null} onChange={(event) => { setSizes((before) => ({ ...before, [path]: event.target.value })); }}>
          {item?.sizes.map((each) => <option key={each.name} value={each.name}>{sizeName(words, item.name, each.name)}</option>)}
        </select>
      </label>
    </div>
  );
  if (item === null || subject === null) {
    return <>{pickers}<div className="told" role="alert"><p>{words.t('page.change.unreadable')}</p><pre lang="en" dir="ltr">{typeof read === 'string' ? read : ''}</pre></div></>;
  }
  return (
    <Bench item={item} size={size} draft={draft} subject={subject} texts={texts} pickers={pickers}
      onChange={(name, value) => { setDraft(withValue(item, size, draft, name, value)); }}
      saving={(isFaulty) => <Saving key={key} item={item} size={size} draft={draft} isFaulty={isFaulty} onSave={save} onBack={() => { setDraft(NO_DRAFT); }} onRead={readAgain} />} />
  );
}

const folderOf = (path: string): string => path.split('/').at(-2) ?? path;

/** The item, or why its file cannot be read, a line a fault. */
function itemOrTold({ files }: ProjectTexts, path: string): Item | string {
  try {
    return readItem(filesInMemory(files), path);
  } catch (error) {
    if (error instanceof FaultError) return error.faults.map(faultLine).join('\n');
    throw error;
  }
}

/** What the workers are to work on; its run counts up whenever it is another. */
function useSubject(texts: ProjectTexts | null, path: string, size: string, draft: Draft): Subject | null {
  const run = useRef(0);
  return useMemo(() => {
    run.current += 1;
    return texts === null ? null : { run: run.current, files: filesFor(texts, path), path, size, values: textsOf(draft) };
  }, [texts, path, size, draft]);
}

/** The item's own file and all kits. */
const filesFor = ({ files }: ProjectTexts, path: string): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(files).filter(([each]) => each === path || each.startsWith('steps/kits/')));

/** Asks before the page is left with values that are not saved. */
function useLeaving(isChanged: boolean): void {
  useEffect(() => {
    if (!isChanged) return undefined;
    const ask = (event: BeforeUnloadEvent): void => { event.preventDefault(); };
    addEventListener('beforeunload', ask);
    return () => { removeEventListener('beforeunload', ask); };
  }, [isChanged]);
}
