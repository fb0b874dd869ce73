import type { Counted, CutOrder, OffCut, PanelSheet, Serves, Thrift, TubeSheet } from '../cut/index.ts';

const share = (part: number, whole: number): string => `${(whole === 0 ? 0 : (100 * part) / whole).toFixed(1)} %`;
const metres = (mm: number): string => `${(mm / 1000).toFixed(1)} m`;
const squareMetres = (mm2: number): string => `${(mm2 / 1e6).toFixed(2)} m²`;
const mm = (length: number): string => String(Math.round(length * 10) / 10);

/** The plan of an order as lines to read: what is used, wasted and proven, what off-cuts are good for, what is short. */
export function cutReport(order: CutOrder): readonly string[] {
  const { lines, stock, kit } = order;
  return [
    `order     ${lines.map(({ model, count }) => `${model.item} ${model.size} ×${count}`).join(', ')}; from ${stock === null ? `whole kits ${kit.name}` : `the stock ${stock}`}`,
    ...thriftLines('tubes', order.tubeThrift, metres, stock !== null),
    ...order.tubes.map((sheet) => `  ${tubeLine(sheet)}`),
    ...thriftLines('panels', order.panelThrift, squareMetres, stock !== null),
    ...order.panels.map((sheet) => `  ${panelLine(sheet)}`),
    `pieces    ${order.tubePieces.map(({ letter, length, count }) => `${letter} ${mm(length)} mm ×${count}`).join(', ')}, ${
      order.panelPieces.map(({ letter, width, height, count }) => `${letter} ${mm(width)} × ${mm(height)} mm ×${count}`).join(', ')}`,
    ...offCutLines(order),
    ...(stock === null ? kitLines(order) : shortLines(order)),
  ];
}

function thriftLines(name: string, thrift: Thrift, measured: (value: number) => string, counted: boolean): readonly string[] {
  const { used, fromKits, fewestFromKits, stock, pieces, useful, leastStock, proven } = thrift;
  const left = `${measured(pieces)} of ${measured(stock)} used, ${share(stock - pieces, stock)} left over, of it ${share(useful, Math.max(1e-9, stock - pieces))} in useful off-cuts`;
  const kits = counted ? `, ${fromKits} of them from whole kits (no plan needs fewer than ${fewestFromKits})` : '';
  const bound = counted ? `no plan uses less than ${measured(leastStock)}` : `no plan needs fewer than ${fewestFromKits}`;
  return [`${name.padEnd(9)} ${used}${kits}: ${left}; ${bound}: ${proven ? 'proven the best' : `at most ${share(stock - leastStock, leastStock)} above the bound`}`];
}

const tubeLine = ({ times, source, length, usable, pieces, ends, offCut }: TubeSheet): string =>
  `${times} × ${mm(length)} mm${source.from === 'stock' ? ` (${source.name}${usable < length ? `, ${mm(usable)} mm sound` : ''})` : ''}: ${
    pieces.join(' ')}, sawn at ${ends.filter((end) => end < usable - 0.5 || usable < length).map(mm).join(' ')} mm${offCut > 0 ? `, ${mm(offCut)} mm left` : ''}`;

const panelLine = ({ times, source, length, width, pieces, offCuts }: PanelSheet): string => {
  const letters = [...new Set(pieces.map(({ letter }) => letter))].map((letter) => `${letter} ×${pieces.filter((piece) => piece.letter === letter).length}`);
  const clear = offCuts.flatMap((each) => (each.clear === null || each.serves.length === 0 ? [] : [`${mm(each.clear.width)} × ${mm(each.clear.height)}`]));
  return `${times} × ${mm(length)} × ${mm(width)} mm${source.from === 'stock' ? ` (${source.name})` : ''}: ${letters.join(', ')}${clear.length === 0 ? '' : `; useful off-cuts ${clear.join(', ')} mm`}`;
};

const served = (serves: readonly Serves[]): string => serves.map(({ item, size, kind, sides }) => `${kind} of ${item} ${size}, ${sides.map(mm).join(' × ')} mm`).join('; ');

/** Useful off-cuts by size, the largest first, and what each is large enough for. */
function offCutLines({ tubes, panels }: CutOrder): readonly string[] {
  const pieces = [
    ...tubes.filter(({ serves }) => serves.length > 0).map(({ times, offCut, serves }) => ({ size: `tube ${mm(offCut)} mm`, measure: offCut, times, serves })),
    ...panels.flatMap(({ times, offCuts }) => offCuts.flatMap(({ clear, serves }: OffCut) =>
      (clear === null || serves.length === 0 ? [] : [{ size: `panel ${mm(clear.width)} × ${mm(clear.height)} mm`, measure: clear.width * clear.height, times, serves }]))),
  ];
  const sizes = [...new Set(pieces.map(({ size }) => size))];
  const lines = sizes.map((size) => {
    const alike = pieces.filter((each) => each.size === size);
    return { measure: alike[0]?.measure ?? 0, text: `  ${alike.reduce((sum, { times }) => sum + times, 0)} × ${size}: ${served(alike[0]?.serves ?? [])}` };
  });
  return lines.length === 0 ? [] : ['off-cuts  large enough for', ...lines.sort((a, b) => b.measure - a.measure).map(({ text }) => text)];
}

function kitLines({ kits, kit }: CutOrder): readonly string[] {
  const parts = kits.parts.filter(({ needed }) => needed > 0).map(({ kind, needed, kits: each }) => `${needed} ${kind}${each === null ? '' : ` (${each})`}`).join(', ');
  return [kits.kits === null
    ? `kits      ${kit.name} does not tell its contents, so kits cannot be counted: ${parts}`
    : `kits      ${kits.kits} of ${kit.name}: ${parts}`];
}

function shortLines({ kits, kit, counted }: CutOrder): readonly string[] {
  const short = kits.parts.filter(({ needed }) => needed > 0);
  const of = (kind: string): Counted | undefined => counted.find((each) => each.kind === kind);
  if (short.length === 0) return ['short     nothing'];
  return [`short     ${short.map(({ kind, needed }) => `${needed} ${kind}${of(kind) === undefined ? '' : ` (${of(kind)?.there ?? 0} of ${of(kind)?.needed ?? 0} there)`}`).join(', ')}`,
    ...(kits.kits === null ? [] : [`kits      ${kits.kits} of ${kit.name} would make up for it`])];
}
