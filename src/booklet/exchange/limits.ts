/** Most characters of a caption: one sentence over its picture (ours; the style of the locale files). */
const captionLimit = 90;

/** The most characters (Unicode code points) a text may have, or null where it may run on. */
export function lengthLimit(key: string): number | null {
  return key.startsWith('actions.') && !/^actions\.(names|sides)\./.test(key) ? captionLimit : null;
}
