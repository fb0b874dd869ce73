/** A hash of all code that makes results, in the package whose folder this is: its own, the lock file for that of others, and Node. */
export function codeMark(root: string): string;
