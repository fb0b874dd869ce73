import type { ReactNode } from 'react';
import { pictureOf, type PictureOf } from '../../draw/index.ts';
import { PicturePlace } from '../pages/picture-place.tsx';
import { COUNTED_KINDS, type SurveyInput } from './types.ts';

const HEAD = ['stock', 'kit', 'place', 'by', 'date'] as const;

/** Who counts what where, and a row of strokes and a total for each part that is only counted. */
export function countPage(input: SurveyInput): ReactNode {
  const { words } = input;
  return (
    <>
      <h1 className="chapter">{words.t('cutting.survey.title')}</h1>
      <dl className="lines">
        {HEAD.map((name) => <div key={name}><dt>{words.t(`cutting.survey.${name}`)}</dt><dd /></div>)}
      </dl>
      <table className="fill counted">
        <thead><tr><th /><th scope="col">{words.t('cutting.survey.strokes')}</th><th scope="col">{words.t('cutting.survey.total')}</th></tr></thead>
        <tbody>
          {COUNTED_KINDS.map((kind) => (
            <tr key={kind}>
              <th scope="row"><Part input={input} kind={kind} /><span>{words.t(`parts.${kind}.name`)}</span></th>
              <td /><td className="total" />
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

function Part({ input: { words, pictures, placePicture }, kind }: { readonly input: SurveyInput; readonly kind: (typeof COUNTED_KINDS)[number] }): ReactNode {
  const of: PictureOf = { what: 'small-part', kind, plate: 0 };
  return <PicturePlace place={placePicture} of={of} size={pictureOf(pictures, of, 'stock count')} alt={words.t(`parts.${kind}.name`)} />;
}
