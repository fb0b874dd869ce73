import { defaultLimits, type Report } from '../../src/check/index.ts';
import { structureCase, type StructureCase } from '../../src/check/structure/case.ts';
import { buildModel } from '../../src/model/index.ts';
import { declaredFor } from '../../src/read/index.ts';
import { itemNamed, reportOf } from '../support/items.ts';
import { structureFrom, structureText, type StructureName } from '../support/structures.ts';

/** The reports of all sizes of a structure. */
export function structureReports(name: StructureName): readonly Report[] {
  const item = itemNamed(name);
  return item.sizes.map((size) => reportOf(item, size.name));
}

/** What the checks look at, of one size and, if told, another text of the file. */
export function structureCaseOf(name: StructureName, size: string, text = structureText(name)): StructureCase {
  const item = structureFrom(name, text);
  return structureCase(buildModel(item, size), declaredFor(item, size), defaultLimits);
}
