import type { ReactNode } from 'react';
import type { Thrift } from '../../cut/index.ts';
import { GlyphMark } from '../pages/glyph-mark.tsx';
import { Spoken } from '../pages/spoken.tsx';
import type { Caution } from '../pages/types.ts';
import { isolate } from '../words/index.ts';
import { itemOf, percent, sidesOf, sourceOf } from './said.ts';
import type { CutPagesInput } from './types.ts';

const CAUTIONS: readonly Caution[] = ['sharp', 'dust', 'eyes', 'gloves'];

/** What was ordered, what to bring, how well it is used, what is short, and the cautions. */
export function summary(input: CutPagesInput): readonly ReactNode[] {
  const { words, order } = input;
  const kit = words.t(`items.kits.${order.kit.name}`);
  return [(
    <div className="cut-summary main" key="summary">
      <h1 className="chapter">{words.t('cutting.title')}</h1>
      <ul className="ordered">
        {order.lines.map(({ model, count }) => <li key={`${model.item} ${model.size}`}><b><Spoken text={words.times(count)} /></b><span>{itemOf(input, model.item, model.size)}</span></li>)}
      </ul>
      <p><Spoken text={order.stock === null ? words.t('cutting.from-kits', { kit }) : words.t('cutting.from-stock', { kit, stock: isolate(order.stock) })} /></p>
      <Bring input={input} />
      <ThriftTable input={input} />
      <Kits input={input} />
      <Cautions input={input} />
    </div>
  )];
}

/** The stock pieces of each pile that the plan takes. */
function Bring({ input }: { readonly input: CutPagesInput }): ReactNode {
  const { words, order } = input;
  const rows = [
    ...order.tubes.map(({ source, times, length }) => ({ kind: 'tube', source, times, sides: [length] })),
    ...order.panels.map(({ source, times, length, width }) => ({ kind: 'panel', source, times, sides: [length, width] })),
  ];
  const nameOf = ({ kind, source, sides }: (typeof rows)[number]): string => `${kind} ${source.from} ${source.name} ${sides.join('×')}`;
  const names = [...new Set(rows.map(nameOf))];
  return (
    <table className="cut-table">
      <thead><tr><th scope="col">{words.t('cutting.bring')}</th><th scope="col">{words.t('cutting.pieces.size')}</th><th scope="col">{words.t('cutting.pile')}</th><th scope="col" className="number">{words.t('booklet.quantity')}</th></tr></thead>
      <tbody>
        {names.map((name) => {
          const alike = rows.filter((row) => nameOf(row) === name);
          const [row] = alike;
          return row === undefined ? null : (
            <tr key={name}>
              <th scope="row">{words.t(`cutting.${row.kind}`)}</th>
              <td><Spoken text={sidesOf(input, row.sides)} /></td>
              <td><Spoken text={sourceOf(input, row.source)} /></td>
              <td className="number"><b>{words.number(alike.reduce((sum, { times }) => sum + times, 0))}</b></td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

function ThriftTable({ input }: { readonly input: CutPagesInput }): ReactNode {
  const { words, order } = input;
  const row = (kind: 'tube' | 'panel', { stock, pieces, useful, leastStock, proven }: Thrift): ReactNode => (
    <tr>
      <th scope="row">{words.t(`cutting.${kind}`)}</th>
      <td className="number"><Spoken text={percent(input, stock === 0 ? 0 : (stock - pieces) / stock)} /></td>
      <td className="number"><Spoken text={percent(input, stock === 0 ? 0 : useful / stock)} /></td>
      <td><Spoken text={proven ? words.t('cutting.thrift.proven') : words.t('cutting.thrift.bound', { share: percent(input, leastStock === 0 ? 0 : (stock - leastStock) / leastStock) })} /></td>
    </tr>
  );
  return (
    <table className="cut-table">
      <thead><tr>
        <th scope="col">{words.t('cutting.thrift.title')}</th><th scope="col" className="number">{words.t('cutting.thrift.left')}</th>
        <th scope="col" className="number">{words.t('cutting.thrift.useful')}</th><th scope="col">{words.t('cutting.thrift.result')}</th>
      </tr></thead>
      <tbody>{row('tube', order.tubeThrift)}{row('panel', order.panelThrift)}</tbody>
    </table>
  );
}

/** Of each part what comes out of kits, and how many kits that takes; over counted stock, what is short. */
function Kits({ input }: { readonly input: CutPagesInput }): ReactNode {
  const { words, order: { kits, counted, stock } } = input;
  const parts = kits.parts.filter(({ needed }) => needed > 0);
  const nameOf = (kind: (typeof parts)[number]['kind']): string => (kind === 'tube' || kind === 'panel' ? words.t(`cutting.${kind}`) : words.t(`parts.${kind}.name`));
  if (parts.length === 0) return <p className="cut-note">{words.t('cutting.kits.nothing')}</p>;
  return (
    <table className="cut-table">
      <thead><tr>
        <th scope="col">{words.t(stock === null ? 'cutting.kits.title' : 'cutting.kits.short')}</th>
        {stock !== null && <th scope="col" className="number">{words.t('cutting.kits.count')}</th>}
        {stock !== null && <th scope="col" className="number">{words.t('cutting.kits.there')}</th>}
        <th scope="col" className="number">{words.t(stock === null ? 'cutting.kits.count' : 'cutting.kits.short')}</th>
        {kits.kits !== null && <th scope="col" className="number">{words.t('cutting.kits.kits')}</th>}
      </tr></thead>
      <tbody>
        {parts.map(({ kind, needed, kits: each }) => {
          const part = counted.find((other) => other.kind === kind);
          return (
            <tr key={kind}>
              <th scope="row">{nameOf(kind)}</th>
              {stock !== null && <td className="number">{part === undefined ? '' : words.number(part.needed)}</td>}
              {stock !== null && <td className="number">{part?.there === undefined || part.there === null ? '' : words.number(part.there)}</td>}
              <td className="number">{words.number(needed)}</td>
              {each !== null && <td className="number">{words.number(each)}</td>}
            </tr>
          );
        })}
        {kits.kits !== null && (
          <tr className="total">
            <th scope="row" colSpan={stock === null ? 2 : 4}>{words.t('cutting.kits.needed')}</th>
            <td className="number"><b>{words.number(kits.kits)}</b></td>
          </tr>
        )}
      </tbody>
    </table>
  );
}

function Cautions({ input: { words, glyphs } }: { readonly input: CutPagesInput }): ReactNode {
  return (
    <div className="cut-cautions">
      <ul>
        {CAUTIONS.map((caution) => (
          <li key={caution}>
            <GlyphMark glyph={glyphs.caution(caution)} label={words.t(`cautions.${caution}.sign`)} height={15} />
            <span>{words.t(`cautions.${caution}.says`)}</span>
          </li>
        ))}
      </ul>
      <p>{words.t('booklet.defer')}</p>
    </div>
  );
}
