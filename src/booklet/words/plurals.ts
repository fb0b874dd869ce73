const ending = /_(zero|one|two|few|many|other)$/;

/** `parts.post_few` → `parts.post`. */
export function baseKey(key: string): string {
  return key.replace(ending, '');
}

/** `parts.post_few` → `few`; null for a text without plural forms. */
export function pluralForm(key: string): string | null {
  return ending.exec(key)?.[1] ?? null;
}

/** The plural forms of a language by Unicode CLDR, sorted. `tag` is a BCP 47 tag. */
export function pluralForms(tag: string): readonly string[] {
  return [...new Intl.PluralRules(tag).resolvedOptions().pluralCategories].sort();
}
