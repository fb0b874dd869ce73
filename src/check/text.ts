import type { Finding } from './types.ts';

/** One plain line for logs, in English, with units: verdict, name, figure, limit, margin, source, parts. */
export function findingText(finding: Finding): string {
  const bound = finding.bound === 'most' ? 'at most' : 'at least';
  const figures = `${amount(finding.figure, finding.unit)}, ${bound} ${amount(finding.limit, finding.unit)}`;
  return `${finding.verdict.padEnd(7)} ${finding.name}: ${figures}, margin ${plain(finding.margin)} [${told(finding.source)}] ${some(finding.parts)}`.trimEnd();
}

/** What is from memory is told so in words: nobody read the publication. */
const told = (source: string): string => source.replaceAll('(M)', '(from memory)').replaceAll(', M)', ', from memory)');

/** Angles are told in degrees, as the workshop measures them; ratios and counts have no unit. */
function amount(value: number, unit: string): string {
  if (unit === 'rad') return `${plain((value * 180) / Math.PI)}°`;
  return unit === '1' ? plain(value) : `${plain(value)} ${unit}`;
}

const plain = (value: number): string => String(Number(value.toPrecision(4)));

const some = (parts: readonly string[]): string =>
  parts.length > 4 ? `${parts.slice(0, 3).join(', ')} and ${parts.length - 3} more` : parts.join(', ');
