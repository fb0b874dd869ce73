import type { Entry } from './entries.ts';

/** A picture that goes with the texts, beside the file of words. */
export interface ReferencePicture {
  /** Such as `action-crease`; a letter first, then letters, digits and dashes. */
  readonly id: string;
  readonly svg: string;
  /** What it shows, in English. */
  readonly shows: string;
}

/** Ids of the pictures that help to understand a text, best first; not all of them need be there. */
export function pictureIdsFor({ base }: Pick<Entry, 'base'>): readonly string[] {
  const [file, name = '', detail = ''] = base.split('.');
  switch (file) {
    case 'actions':
      if (name === 'sides') return [];
      return name === 'names' ? [`action-${detail}`] : [`step-${name}`, `action-${name}`];
    case 'parts': return [`part-${name}`];
    case 'cautions': return [`sign-${name}`];
    case 'checks': return [`check-${name}`];
    case 'dimensions': return ['lettered'];
    case 'booklet': return name === 'tools' ? [`tool-${detail}`] : [];
    default: return [];
  }
}
