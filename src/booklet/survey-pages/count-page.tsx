import type { ReactNode } from 'react';
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
  const id = `small:${kind}`;
  const size = pictures[id];
  if (size === undefined) throw new Error(`stock count: no picture "${id}"`);
  return <div className="picture" style={{ width: `${size.width}mm`, height: `${size.height}mm` }} dangerouslySetInnerHTML={{ __html: placePicture({ id, ...size, alt: words.t(`parts.${kind}.name`) }) }} />;
}
