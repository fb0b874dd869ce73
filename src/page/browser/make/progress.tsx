import type { ReactNode } from 'react';
import { isolate, Spoken, type Words } from '../../../booklet/index.ts';
import type { MadeFile } from '../../types.ts';
import { itemName, useWords } from '../words.tsx';
import type { Making, MakingHook } from './use-making.ts';

/** How far it is, and what is ready to be taken. While it goes it stays in sight at the foot of the screen, with the button that stops it. */
export function Progress({ making, mayStop }: { readonly making: MakingHook; readonly mayStop: boolean }): ReactNode {
  const words = useWords();
  const { isGoing, isTaken, asked, begun, share, files, earlier, end } = making;
  return (
    <div className={isGoing ? 'making going' : 'making'}>
      {isTaken && <p className="reminder taken" role="alert">{words.t('page.make.taken')}</p>}
      <p role="status"><Spoken text={told(words, making)} /></p>
      <p className="buttons"><button type="button" className="stop-button" disabled={!isGoing || !mayStop} onClick={() => { void making.stop(); }}>{words.t('page.make.stop')}</button></p>
      {isGoing && <progress aria-label={words.t('page.make.progress')} {...(begun === 0 ? {} : { value: Math.min(1, (begun - 1 + share) / Math.max(1, asked.sizes)) })} />}
      {end?.how === 'failed' && end.told !== '' && <pre className="told" role="alert" lang="en" dir="ltr">{end.told}</pre>}
      {files.length > 0 && <p className="folder">{words.t('page.make.folder', { folder: folders(files.map(({ path }) => path)) })}</p>}
      {files.length > 0 && <div className="made"><Files files={files} /></div>}
      {earlier.length > 0 && (
        <details className="earlier">
          <summary>{words.t('page.make.earlier', { count: earlier.length })}</summary>
          <p className="folder">{words.t('page.make.folder', { folder: folders(earlier.map(({ path }) => path)) })}</p>
          <Files files={earlier} />
        </details>
      )}
    </div>
  );
}

function Files({ files }: { readonly files: readonly MadeFile[] }): ReactNode {
  const words = useWords();
  return (
    <ul className="files">
      {files.map(({ path, bytes }) => (
        <li key={path}><a href={`/made/${path}`} download dir="ltr">{path.split('/').at(-1)}</a> {path.endsWith('.html') && words.t('page.make.phone')} <Spoken text={isolate(`${words.number(bytes / 1e6, 1)} MB`)} /></li>
      ))}
    </ul>
  );
}

function told(words: Words, { isGoing, asked, item, begun, files, end }: Making): string {
  const count = files.filter(({ path }) => isBooklet(path)).length;
  const isPack = asked.what === 'pack';
  if (isGoing && isPack) return words.t('page.pack.going', { done: count, all: asked.booklets });
  if (isGoing) return words.t(begun === 0 ? 'page.make.ordering' : 'page.make.going', { item: item === null ? '' : itemName(words, item), done: count, all: asked.booklets });
  if (end?.how === 'made') return words.t(isPack ? 'page.pack.made' : 'page.make.made', { count });
  if (end?.how === 'stopped') return words.t(isPack ? 'page.pack.stopped' : 'page.make.stopped', { count });
  return end?.how === 'failed' ? words.t('page.make.failed') : '';
}

/** Where the files stand, from the folder the program was started in. */
const folders = (paths: readonly string[]): string => [...new Set(paths.map((path) => path.slice(0, path.lastIndexOf('/'))))].join(', ');

/** Neither the guide for phones nor the sheets to staple, which come with the booklets. */
const isBooklet = (path: string): boolean => path.endsWith('.pdf') && !path.endsWith('-stitched.pdf');
