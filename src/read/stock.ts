import { FaultError } from './faults.ts';
import { stockMessages as say } from './stock-messages.ts';
import { stockSchema, type StockFile } from './stock-schema.ts';
import type { Fault, Stock, StockDefect, StockPanel } from './types.ts';
import { validated } from './validate.ts';
import { yamlSource, type FieldPath } from './yaml-source.ts';

/** Where a fault of a field is told: by its way in the file. */
export type Complain = (path: FieldPath, remedy: string) => void;

/**
 * Reads one stock file. `file` is its path, for the messages. Lengths come out in mm, rectangles from the panel's
 * lower left corner. Throws a FaultError with every fault of the file.
 */
export function stockFromText(text: string, file: string): Stock {
  const source = yamlSource(file, text);
  if (source.faults.length > 0) throw new FaultError(source.faults);
  const { data, faults } = validated(source, stockSchema);
  const all: Fault[] = [...faults];
  if (data === null) throw new FaultError(all);
  stockRules(data, (path, remedy) => all.push(source.fault(path, remedy)));
  if (all.length > 0) throw new FaultError(all);
  return stockOf(data);
}

type PanelFile = StockFile['panels'][number];
type DefectFile = NonNullable<PanelFile['not-to-use']>[number];

/** What must hold between fields. */
export function stockRules(data: StockFile, complain: Complain): void {
  (['tubes', 'panels', 'cables'] as const).forEach((list) => {
    data[list].forEach(({ name }, index) => {
      if (data[list].findIndex((other) => other.name === name) < index) complain([list, index, 'name'], say.nameOnce);
    });
  });
  data.tubes.forEach((tube, index) => {
    if ((tube['not-from-end'] ?? 0) >= tube.length) complain(['tubes', index, 'not-from-end'], say.lessThan('length; cracked: true if none of it is to be used'));
  });
  data.panels.forEach((panel, index) => {
    if (panel.width > panel.length) complain(['panels', index, 'width'], say.lengthFirst);
    panel['not-to-use']?.forEach((defect, at) => { defectRules(panel, defect, (field, remedy) => { complain(['panels', index, 'not-to-use', at, field], remedy); }); });
  });
}

function defectRules(panel: PanelFile, defect: DefectFile, complain: (field: string, remedy: string) => void): void {
  if (defect.is === 'broken-corner' && (defect.along ?? 0) + (defect.across ?? 0) > 0) complain(defect.along === undefined ? 'across' : 'along', say.brokenCorner);
  if (defect.length === undefined && defect.width === undefined) complain('length', say.extent);
  if ((defect.along ?? 0) + (defect.length ?? 0) > panel.length || (defect.along ?? 0) >= panel.length) complain(defect.length === undefined ? 'along' : 'length', say.onPanel('length'));
  if ((defect.across ?? 0) + (defect.width ?? 0) > panel.width || (defect.across ?? 0) >= panel.width) complain(defect.width === undefined ? 'across' : 'width', say.onPanel('width'));
}

/** The stock with every rectangle counted from the lower left corner. */
export function stockOf(data: StockFile): Stock {
  const { name, kit, note, tubes, panels, cables, joints } = data;
  return {
    name, kit, note: note ?? null,
    tubes: tubes.map((tube) => ({ name: tube.name, count: tube.count, length: tube.length, notFromEnd: tube['not-from-end'] ?? 0, cracked: tube.cracked ?? false })),
    panels: panels.map(panelOf),
    cables,
    joints, panelPins: data['panel-pins'], jointPins: data['joint-pins'], wingNuts: data['wing-nuts'],
  };
}

function panelOf(panel: PanelFile): StockPanel {
  return {
    name: panel.name, count: panel.count, length: panel.length, width: panel.width, grain: panel.grain ?? null,
    defects: (panel['not-to-use'] ?? []).map((defect) => fromLowerLeft(panel, defect)),
  };
}

function fromLowerLeft(panel: PanelFile, { is, corner, along = 0, across = 0, length, width }: DefectFile): StockDefect {
  const wide = length ?? panel.length - along;
  const high = width ?? panel.width - across;
  return {
    is, corner,
    x: corner.endsWith('right') ? panel.length - along - wide : along,
    y: corner.startsWith('upper') ? panel.width - across - high : across,
    width: wide, height: high,
  };
}
