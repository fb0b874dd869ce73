import { shortMark } from '../booklet/index.ts';
import type { Report } from '../check/index.ts';
import type { TubeCutPlan } from '../cut/index.ts';
import type { Picture } from '../draw/index.ts';
import { contentHash } from '../keep/index.ts';
import type { Model } from '../model/index.ts';
import type { Plan } from '../plan/index.ts';
import type { Item, Quantity } from '../read/index.ts';


/** One size variant, worked through: what the booklets are made from. */
export interface Variant {
  readonly item: Item;
  readonly model: Model;
  readonly plan: Plan;
  readonly report: Report;
  readonly cuts: TubeCutPlan;
  readonly pictures: readonly Picture[];
}

const rounded = (value: number): number => Math.round(value * 1000) / 1000;

const UNITS: Readonly<Record<Quantity['dimension'], string>> = { length: 'mm', angle: 'rad', force: 'N', mass: 'kg', count: '1', ratio: '1' };

/** What build.json says of a variant: every figure of the variant with its unit, the steps in order, the findings. */
export function buildRecord({ item, model, plan, report, cuts }: Omit<Variant, 'pictures'>): object {
  const { pattern } = model;
  return {
    item: item.name,
    size: model.size,
    revision: item.revision,
    source: item.source,
    parameters: Object.fromEntries(Object.entries(model.parameters).map(([name, quantity]) =>
      [name, { value: rounded(quantity.value), unit: UNITS[quantity.dimension] }])),
    dimensions: model.dimensions.map(({ letter, name, value }) => ({ letter, name, value: rounded(value), unit: 'mm' })),
    parts: partCounts(model),
    cutLengths: model.tubes.map(({ kind, length, count }) => ({ kind, length: rounded(length), unit: 'mm', count })),
    cutPlan: {
      stock: cuts.stock, kerf: cuts.kerf, unit: 'mm', tubesUsed: cuts.tubesUsed, fewestPossible: cuts.fewest, shortest: rounded(cuts.shortest),
      patterns: cuts.patterns.map((pattern_) => ({ ...pattern_, pieces: pattern_.pieces.map(({ kind, length }) => ({ kind, length })), offCut: rounded(pattern_.offCut) })),
    },
    flatPattern: {
      unit: 'mm',
      blank: pattern.blank.map(rounded),
      inside: pattern.inside.map((half) => rounded(2 * half)),
      notch: pattern.notch.map(rounded),
      notchRadius: pattern.notchRadius,
      flaps: pattern.flaps.map((flap) => ({
        side: flap.side, creases: flap.creases.map(rounded), halfCut: rounded(flap.halfCut), edge: rounded(flap.edge),
        corner: rounded(flap.corner), pins: flap.pins.map(rounded), pinLine: rounded(flap.pinLine), widestGap: rounded(flap.widestGap),
      })),
    },
    steps: plan.steps.map((step) => ({
      number: step.number, key: step.key, action: step.action, side: step.side, run: step.run, times: step.times,
      newParts: step.newParts.map(({ kind, ids }) => ({ kind, count: ids.length })),
      supplies: step.supplies.map(({ name, count, size }) => ({ name, count, size: size.map(rounded), unit: 'mm' })),
      tools: step.tools, sizes: step.sizes, people: step.people, cautions: step.cautions, check: step.check, minutes: step.minutes,
    })),
    order: plan.reasons,
    findings: report.findings.map((finding) => ({ ...finding, figure: rounded(finding.figure), limit: rounded(finding.limit), margin: rounded(finding.margin) })),
    notApplied: report.notApplied,
    advice: report.advice,
  };
}

/** The file build.json: the mark that the booklets bear, the record, and the pictures that they were printed from, by their content. */
export const buildFile = (variant: Variant): string =>
  `${JSON.stringify({ mark: contentMark(variant), ...buildRecord(variant), pictures: variant.pictures.map(({ id, svg }) => ({ id, sha256: contentHash(svg) })) }, null, 2)}\n`;

function partCounts(model: Model): readonly object[] {
  const kinds = [...new Set(model.parts.map((part) => part.kind))];
  return kinds.map((kind) => {
    const parts = model.parts.filter((part) => part.kind === kind);
    return { kind, count: parts.length, mass: rounded(parts.reduce((sum, part) => sum + part.mass, 0)), unit: 'kg' };
  });
}

/**
 * Eight characters that change whenever a figure or a picture of the variant changes, and not when its file says the
 * same in another way, or says something else of other sizes.
 */
export const contentMark = (variant: Variant): string =>
  shortMark(JSON.stringify({ ...buildRecord(variant), source: undefined }), ...variant.pictures.flatMap(({ id, svg }) => [id, svg]));
