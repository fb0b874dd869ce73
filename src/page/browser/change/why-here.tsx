import type { ReactNode } from 'react';
import { Spoken } from '../../../booklet/index.ts';
import { useWords } from '../words.tsx';
import type { Why } from '../workers/messages.ts';

/** Why a step comes where it does, a line a reason. */
export function WhyHere({ why }: { readonly why: readonly Why[] }): ReactNode {
  const words = useWords();
  return (
    <details className="why">
      <summary>{words.t('page.why.name')}</summary>
      <ul>
        {why.map((each, index) => (
          <li key={index}>
            <Spoken text={words.t(`page.why.${each.why}`, { steps: each.steps.map((step) => words.number(step)).join(', '), parts: each.parts.map((kind) => words.t(`parts.${kind}.name`)).join(', ') })} />
            {each.rule !== null && <span lang="en" dir="ltr"> {each.rule}</span>}
          </li>
        ))}
        {why.length === 0 && <li>{words.t('page.why.free')}</li>}
      </ul>
    </details>
  );
}
