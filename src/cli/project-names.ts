import { filesOnDisk } from '../read/files-on-disk.ts';
import { listItems } from '../read/files.ts';

/** The names of the items a command works on. Throws when there is none of that name. */
export const itemNames = (name: string | undefined, root = '.'): readonly string[] => itemFiles(name, root).map(folderOf);

/** Whether an item is asked for by the path of its file. */
export const isFileOfItem = (name: string | undefined): name is string => name?.endsWith('/item.yaml') === true;

const folderOf = (path: string): string => path.split('/').at(-2) ?? path;

/** Their files, by path. */
export function itemFiles(name: string | undefined, root: string): readonly string[] {
  if (isFileOfItem(name)) return [name];
  const made = listItems(filesOnDisk(root));
  if (made.length === 0) throw new Error('steps/: no item here; would be right: a folder with an item.yaml, and the command run from the folder that holds steps/');
  if (name === undefined) return made;
  const wanted = made.filter((path) => folderOf(path) === name);
  if (wanted.length > 0) return wanted;
  throw new Error(`steps/${name}/item.yaml: no such item; would be right: one of ${made.map(folderOf).join(', ')}`);
}

