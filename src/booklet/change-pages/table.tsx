import type { ReactNode } from 'react';
import { Spoken } from '../pages/spoken.tsx';
import type { Words } from '../words/index.ts';
import type { Row } from './rows.ts';

type Cells = Extract<Row, { readonly cells: readonly string[] }>;

/** The rows of a page, a table under each heading. */
export function ChangeTable({ words, rows }: { readonly words: Words; readonly rows: readonly Row[] }): ReactNode {
  const tables: { readonly heading: string | null; readonly rows: Cells[] }[] = [];
  for (const row of rows) {
    if ('heading' in row) tables.push({ heading: row.heading, rows: [] });
    else if (tables.length === 0) tables.push({ heading: null, rows: [row] });
    else tables.at(-1)?.rows.push(row);
  }
  return tables.map(({ heading, rows: of }, index) => {
    const columns = Math.max(...of.map(({ cells }) => cells.length));
    return (
      <table key={index} className={`changed ${columns === 3 ? 'three' : 'two'}`}>
        {heading !== null && (
          <thead><tr>
            <th scope="col" className="part-of-changes">{heading}</th>
            {columns === 3 ? <><th scope="col">{words.t('changes.before')}</th><th scope="col">{words.t('changes.after')}</th></> : <th />}
          </tr></thead>
        )}
        <tbody>{of.map(({ cells }, row) => <tr key={row}>{cells.map((text, column) => <Cell key={column} text={text} column={column} of={cells.length} />)}</tr>)}</tbody>
      </table>
    );
  });
}

/** What is now stands bold. */
function Cell({ text, column, of }: { readonly text: string; readonly column: number; readonly of: number }): ReactNode {
  if (column === 0) return <th scope="row"><Spoken text={text} /></th>;
  return <td>{of === 3 && column === 2 ? <b><Spoken text={text} /></b> : <Spoken text={text} />}</td>;
}
