import { Fragment, type ReactNode } from 'react';
import { isolate, isolateName } from '../words/index.ts';
import { Spoken } from './spoken.tsx';
import type { BookletInput } from './types.ts';

/** All languages the booklet comes in, this one in bold: their own names, without words their codes (ISO 639). */
export function Languages({ input }: { readonly input: BookletInput }): ReactNode {
  const { words: { about, tags }, edition, languages = [about.name] } = input;
  return languages.map((name, index) => {
    const Weight = name === about.name ? 'b' : 'span';
    const text = edition === 'words' ? isolateName(name) : isolate(tags[name] ?? name);
    return (
      <Fragment key={name}>
        {index > 0 && ' · '}
        <Weight lang={tags[name]}><Spoken text={text} /></Weight>
      </Fragment>
    );
  });
}
