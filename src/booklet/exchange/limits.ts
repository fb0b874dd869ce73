/** Most characters of a caption: one sentence over its picture (ours; the style of the locale files). */
const captionLimit = 90;

/** The most bytes of a file of words that came back. Ours: ten times what all texts of a language take. */
export const MOST_BYTES = 5_000_000;

/** The most characters (Unicode code points) a text may have, or null where it may run on. */
export function lengthLimit(key: string): number | null {
  return key.startsWith('actions.') && !/^actions\.(names|sides)\./.test(key) ? captionLimit : null;
}
