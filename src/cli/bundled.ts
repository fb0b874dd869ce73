/** What `program/bundle.mjs` puts in place of these names: the mark of the code in the bundle, and its folder. */
declare const FOLDWRIGHT_CODE: string;
declare const FOLDWRIGHT_PROGRAM: string;

/** The bundle this runs in; null where the code is read file by file. */
export const bundled: { readonly mark: string; readonly folder: string } | null =
  typeof FOLDWRIGHT_CODE === 'undefined' ? null : { mark: FOLDWRIGHT_CODE, folder: FOLDWRIGHT_PROGRAM };
