import { useState, type ReactNode } from 'react';
import type { SavingHook } from '../change/use-saving.ts';
import { itemName, sizeName, useWords } from '../words.tsx';

/** Booklets are made from the files: what is changed and not saved is named where they are ordered, and can be saved there. */
export function UnsavedFirst({ saving }: { readonly saving: SavingHook }): ReactNode {
  const words = useWords();
  const [told, setTold] = useState<string | null>(null);
  const { unsaved } = saving;
  if (unsaved.length === 0) return null;
  const saveAll = async (): Promise<void> => {
    setTold(null);
    try {
      for (const place of unsaved) {
        const answer = await saving.save(place);
        if (!answer.saved) setTold(answer.told);
      }
    } catch (error) {
      setTold(error instanceof Error ? error.message : String(error));
    }
  };
  return (
    <div className="reminder unsaved" role="alert">
      <p>{words.t('page.make.unsaved', { sizes: unsaved.map(({ item, size }) => `${itemName(words, item)}, ${sizeName(words, item, size)}`).join('; ') })}</p>
      {told !== null && <pre lang="en" dir="ltr">{told}</pre>}
      <p><button type="button" onClick={() => { void saveAll(); }}>{words.t('page.make.save')}</button></p>
    </div>
  );
}
