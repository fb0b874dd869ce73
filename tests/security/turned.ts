/** Signs that turn what follows the other way round until their line or element ends (UAX #9). */
export const TURNED = '\u202eturned\u2067';

/** A text without blanks and without signs that are not seen. */
export const bare = (text: string): string => text.replaceAll(/[\s\u202a-\u202e\u2066-\u2069\u00ad\u200b]/g, '');
