/** The files as the reader sees them. Paths are relative, with `/` between folders. */
export interface ReadFiles {
  /** The text of a file, or null when there is none. */
  readonly text: (path: string) => string | null;
  /** Names of the files and folders right inside a folder, sorted; empty when there is no such folder. */
  readonly list: (folder: string) => readonly string[];
}

/** Files given as a plain map from path to text. */
export function filesInMemory(texts: Readonly<Record<string, string>>): ReadFiles {
  const byPath = new Map(Object.entries(texts));
  return {
    text: (path) => byPath.get(path) ?? null,
    list: (folder) => {
      const inside = [...byPath.keys()].filter((path) => path.startsWith(`${folder}/`));
      return [...new Set(inside.map((path) => path.slice(folder.length + 1).split('/')[0] ?? ''))].sort();
    },
  };
}

/** Paths of all item files, `<folder>/<item>/item.yaml`, sorted. */
export function listItems(files: ReadFiles, folder = 'steps'): readonly string[] {
  return files.list(folder)
    .map((name) => `${folder}/${name}/item.yaml`)
    .filter((path) => files.text(path) !== null);
}
