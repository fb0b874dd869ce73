/** Signs that are not seen and do something to what is round them: controls, which terminals obey, and marks that turn the text that follows (UAX #9). */
const unseen = /[\p{Cc}\u2028\u2029\u202a-\u202e\u2066-\u2069]/gu;

/** A text with signs to be seen in the place of those that are not seen: `\u202e`. Ends of lines stay. */
export const seen = (text: string): string =>
  text.replace(unseen, (sign) => (sign === '\n' ? sign : `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`));

/** What would be right where a sign is not seen. */
export const withoutUnseen = 'a text without controls and marks that turn the text that follows';

/** The first sign of a text that is not seen, as `seen` writes it, and where it stands, from 0. Ends of lines and tabs are none. Null where there is none. */
export function firstUnseen(text: string): { readonly sign: string; readonly at: number } | null {
  const found = [...text.matchAll(unseen)].find(([sign]) => !'\n\r\t'.includes(sign));
  return found === undefined ? null : { sign: seen(found[0]), at: found.index };
}
