/** Something of known height that stands on a page. */
export interface Tall {
  /** mm */
  readonly height: number;
  /** Must stand on the same page as what comes after it. */
  readonly leads?: boolean;
}

/**
 * Fills pages from the top in the given order; a new page starts when the next group (an entry with all that
 * lead up to it) no longer fits. `room` and `first` (the first page) are in mm. Throws when a group is higher than a page.
 */
export function packPages<Entry extends Tall>(entries: readonly Entry[], room: number, first: number = room): readonly (readonly Entry[])[] {
  const pages: Entry[][] = [];
  let left = 0;
  for (const group of leadGroups(entries)) {
    const height = group.reduce((sum, entry) => sum + entry.height, 0);
    if (height > room) throw new Error(`booklet: ${height} mm of height do not fit a page that holds ${room} mm`);
    if (pages.length === 0) { pages.push([]); left = first; }
    if (height > left + 1e-6) { pages.push([]); left = room; }
    pages.at(-1)?.push(...group);
    left -= height;
  }
  return pages;
}

/** Entries in groups that may not be parted: one, with all that lead up to it. */
export function leadGroups<Entry extends Tall>(entries: readonly Entry[]): readonly (readonly Entry[])[] {
  const groups: Entry[][] = [];
  let open = false;
  for (const entry of entries) {
    if (open) groups.at(-1)?.push(entry);
    else groups.push([entry]);
    open = entry.leads === true;
  }
  return groups;
}

/** Puts things of known width side by side, in order, with `gap` between them (mm). */
export function packRows<Entry extends { readonly width: number }>(entries: readonly Entry[], width: number, gap: number): readonly (readonly Entry[])[] {
  const rows: Entry[][] = [];
  let left = -1;
  for (const entry of entries) {
    if (entry.width > left) { rows.push([]); left = width; }
    rows.at(-1)?.push(entry);
    left -= entry.width + gap;
  }
  return rows;
}
