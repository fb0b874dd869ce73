import type { ReactNode } from 'react';
import { Spoken } from '../pages/spoken.tsx';
import { isolate } from '../words/index.ts';
import { Corners, DamageSides, Grain, PanelSides, SquaredPanel } from './drawn.tsx';
import type { SurveyInput } from './types.ts';

/** Panels alike on one sheet, rectangles not to be used on one panel, and the squares, in mm of paper and of panel. */
const BLOCKS = 2;
const DAMAGE_ROWS = 3;
const SQUARES = [15, 10] as const;
const SQUARE = 5;
const SQUARE_IS = 100;

/** For all panels alike: sides, count, grain, and squares to draw their damage on, with its figures beside. */
export function panelPage(input: SurveyInput): ReactNode {
  const { words } = input;
  return (
    <>
      <h1 className="chapter">{words.t('cutting.survey.panels')}</h1>
      <p><Spoken text={words.t('cutting.survey.square', { length: words.measure(SQUARE_IS, 'mm') })} /></p>
      {Array.from({ length: BLOCKS }, (_, index) => <Block key={index} input={input} />)}
    </>
  );
}

function Block({ input: { words } }: { readonly input: SurveyInput }): ReactNode {
  const said = (key: string): string => words.t(`cutting.survey.${key}`);
  const mm = <Spoken text={isolate('mm')} />;
  return (
    <section className="panel-block">
      <div className="squared"><SquaredPanel label={said('damage')} squares={SQUARES} square={SQUARE} /></div>
      <div className="figures">
        <div className="row">
          <Box label={said('name')} wide />
          <Box label={said('total')} />
        </div>
        <div className="row">
          <Box label={<>{said('length')} {mm}</>} sign={<PanelSides label={said('length')} side="length" />} />
          <Box label={<>{said('width')} {mm}</>} sign={<PanelSides label={said('width')} side="width" />} />
          <div className="grain">
            <i /><Grain label={said('grain')} along="length" /><i /><Grain label={said('grain')} along="width" />
            <span>{said('grain')}</span>
          </div>
        </div>
        <table className="fill damage">
          <thead><tr>
            {(['corner', 'along', 'across', 'length', 'width'] as const).map((shows) => (
              <th scope="col" key={shows}><DamageSides label={said(shows)} shows={shows} /><span>{said(shows)}</span><span>{shows === 'corner' ? '\u00a0' : mm}</span></th>
            ))}
          </tr></thead>
          <tbody>{Array.from({ length: DAMAGE_ROWS }, (_, row) => <tr key={row}><td className="corners"><Corners label={said('corner')} /></td><td /><td /><td /><td /></tr>)}</tbody>
        </table>
      </div>
    </section>
  );
}

function Box({ label, sign = null, wide = false }: { readonly label: ReactNode; readonly sign?: ReactNode; readonly wide?: boolean }): ReactNode {
  return <div className={wide ? 'box wide' : 'box'}>{sign}<div className="entry" /><span>{label}</span></div>;
}
