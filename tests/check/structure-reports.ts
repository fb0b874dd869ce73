import { checkModel, defaultLimits, type Report } from '../../src/check/index.ts';
import { structureCase, type StructureCase } from '../../src/check/structure/case.ts';
import { buildModel } from '../../src/model/index.ts';
import { declaredFor } from '../../src/read/index.ts';
import { once } from '../support/once.ts';
import { structureFrom, structureItem, structureText, type StructureName } from '../support/structures.ts';

/** The reports of all sizes of a structure. */
export const structureReports = once((name: StructureName): readonly Report[] => {
  const item = structureItem(name);
  return item.sizes.map((size) => checkModel(buildModel(item, size.name), declaredFor(item, size.name)));
});

/** What the checks look at, of one size and, if told, another text of the file. */
export function structureCaseOf(name: StructureName, size: string, text = structureText(name)): StructureCase {
  const item = structureFrom(name, text);
  return structureCase(buildModel(item, size), declaredFor(item, size), defaultLimits);
}
