import type { Finding } from '../../../check/index.ts';
import type { PlacedLabel } from '../stage/labels.ts';
import type { Palette } from '../stage/palette.ts';
import type { Packet } from '../workers/messages.ts';

/** A finding with the number it bears in the list and on the model, or null when it holds. */
export interface NumberedFinding {
  readonly key: string;
  readonly finding: Finding;
  readonly number: number | null;
}

const GRAVITY: Readonly<Record<Finding['verdict'], number>> = { fail: 0, caution: 1, pass: 2 };

export const bySeverity = (one: Finding, other: Finding): number => GRAVITY[one.verdict] - GRAVITY[other.verdict];

/** What fails first, then cautions, then what holds; the first two are numbered. */
export function numbered(findings: readonly Finding[]): readonly NumberedFinding[] {
  return [...findings].sort(bySeverity)
    .map((finding, index) => ({ key: `${finding.name} ${index}`, finding, number: finding.verdict === 'pass' ? null : index + 1 }));
}

/** The numbers, each at the first part that causes its finding; those of one part together. */
export function findingLabels(findings: readonly NumberedFinding[], packet: Packet): readonly PlacedLabel[] {
  const byPart = new Map<string, NumberedFinding[]>();
  for (const each of findings) {
    const body = packet.bodies.find(({ id }) => each.finding.parts.includes(id));
    if (each.number !== null && body !== undefined) byPart.set(body.id, [...(byPart.get(body.id) ?? []), each]);
  }
  return [...byPart].flatMap(([part, those]): readonly PlacedLabel[] => {
    const pose = packet.bodies.find(({ id }) => id === part)?.pose;
    if (pose === undefined) return [];
    return [{
      key: `finding ${part}`, at: [pose[12] ?? 0, pose[13] ?? 0, pose[14] ?? 0], text: those.map(({ number }) => String(number)).join(' · '),
      look: those.some(({ finding }) => finding.verdict === 'fail') ? 'fail' : 'caution',
    }];
  });
}

/** Parts that cause a failure, and over them those of the finding that is pointed at. */
export function findingTints(findings: readonly NumberedFinding[], pointed: string | null): ReadonlyMap<string, keyof Palette['faces']> {
  const failing = findings.filter(({ finding }) => finding.verdict === 'fail').flatMap(({ finding }) => finding.parts);
  const shown = findings.find(({ key }) => key === pointed)?.finding.parts ?? [];
  return new Map([...failing.map((part) => [part, 'fail'] as const), ...shown.map((part) => [part, 'pointed'] as const)]);
}
