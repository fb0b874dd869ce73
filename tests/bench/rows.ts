/** One line of the table: what was measured, and the goal it stands beside; null where it is there to compare with, or is not reached here. */
export interface Row {
  readonly work: string;
  readonly figure: number;
  readonly unit: 's' | 'ms' | '×' | 'MB';
  readonly goal: number | null;
  /** Processor seconds of all programs, and their memory together, where the system tells. */
  readonly processor?: number | null;
  readonly peakMegabytes?: number | null;
}

const plain = (value: number | null | undefined): string => (value === null || value === undefined ? '' : value >= 100 ? value.toFixed(0) : value.toPrecision(3));

/** The rows as a table in Markdown. */
export function table(rows: readonly Row[]): string {
  const cells = rows.map(({ work, figure, unit, goal, processor, peakMegabytes }) =>
    [work, `${plain(figure)} ${unit}`, goal === null ? '' : `≤ ${goal} ${unit}`, goal === null ? '' : figure <= goal ? 'yes' : 'no', plain(processor), plain(peakMegabytes)]);
  const head = ['work', 'measured', 'goal', 'met', 'processor s', 'peak MB'];
  return [head, head.map(() => '---'), ...cells].map((row) => `| ${row.join(' | ')} |`).join('\n');
}
