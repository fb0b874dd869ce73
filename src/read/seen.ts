/**
 * A text with signs to be seen in the place of those that are not seen and do something to what is round them: controls,
 * which terminals obey, and marks that turn the text that follows (UAX #9): `\u202e`. Ends of lines stay.
 */
export const seen = (text: string): string =>
  text.replace(/[\p{Cc}\u2028\u2029\u202a-\u202e\u2066-\u2069]/gu, (sign) => (sign === '\n' ? sign : `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`));
