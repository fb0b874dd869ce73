import type { ReactNode } from 'react';
import { Spoken } from '../pages/spoken.tsx';
import { isolate } from '../words/index.ts';
import { CableLength, Cracked, DamagedEnd, TubeLength } from './drawn.tsx';
import type { SurveyInput } from './types.ts';

const TUBE_ROWS = 12;
const CABLE_ROWS = 4;

/** A line for all tubes alike, and for all cables alike. */
export function tubePage(input: SurveyInput): ReactNode {
  const { words } = input;
  const said = (key: string): string => words.t(`cutting.survey.${key}`);
  return (
    <>
      <h1 className="chapter">{said('tubes')}</h1>
      <p>{said('one-line')}</p>
      <table className="fill">
        <thead><tr>
          <th scope="col" className="called">{said('name')}</th>
          <th scope="col"><TubeLength label={said('length')} /><span>{said('length')} <Spoken text={isolate('mm')} /></span></th>
          <th scope="col"><DamagedEnd label={said('damaged-end')} /><span>{said('damaged-end')} <Spoken text={isolate('mm')} /></span></th>
          <th scope="col"><Cracked label={said('cracked')} /><span>{said('cracked')}</span></th>
          <th scope="col" className="strokes">{said('strokes')}</th>
          <th scope="col">{said('total')}</th>
        </tr></thead>
        <tbody>{rows(TUBE_ROWS, (row) => <tr key={row}><td /><td /><td /><td className="tick"><i /></td><td /><td className="total" /></tr>)}</tbody>
      </table>
      <h2 className="survey-part">{said('cables')}</h2>
      <table className="fill">
        <thead><tr>
          <th scope="col" className="called">{said('name')}</th>
          <th scope="col"><CableLength label={said('length')} /><span>{said('length')} <Spoken text={isolate('mm')} /></span></th>
          <th scope="col" className="strokes">{said('strokes')}</th>
          <th scope="col">{said('total')}</th>
        </tr></thead>
        <tbody>{rows(CABLE_ROWS, (row) => <tr key={row}><td /><td /><td /><td className="total" /></tr>)}</tbody>
      </table>
    </>
  );
}

const rows = (count: number, row: (index: number) => ReactNode): readonly ReactNode[] => Array.from({ length: count }, (_, index) => row(index));
