import { Fragment, type ReactNode } from 'react';
import { isolateName } from '../words/index.ts';
import { Spoken } from './spoken.tsx';
import { languagesOf } from './in-languages.tsx';
import type { BookletInput } from './types.ts';

/** All languages the booklet comes in by their own names, this booklet's in bold. */
export function Languages({ input }: { readonly input: BookletInput }): ReactNode {
  const { words: { about, tags }, languages = [about.name] } = input;
  const own = languagesOf(input).map((words) => words.about.name);
  return languages.map((name, index) => {
    const Weight = own.includes(name) ? 'b' : 'span';
    return (
      <Fragment key={name}>
        {index > 0 && ' · '}
        <Weight lang={tags[name]}><Spoken text={isolateName(name)} /></Weight>
      </Fragment>
    );
  });
}
