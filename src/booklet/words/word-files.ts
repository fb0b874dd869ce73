/** The text of every locale file by its path under `locales/`, for example `fr/actions.json`. */
export type LocaleFiles = Readonly<Record<string, string>>;

/** The files of words that each language's folder holds beside `about.json`; keys start with these names. */
export const wordFiles = ['booklet', 'actions', 'parts', 'cautions', 'checks', 'dimensions', 'findings', 'items', 'parameters', 'guide', 'cutting', 'pack', 'changes', 'page'] as const;

export type WordFile = (typeof wordFiles)[number];
