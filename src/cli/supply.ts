import { loadSolver, planOrder, type CutOrder, type Edges, type OrderLine } from '../cut/index.ts';
import { buildModel } from '../model/index.ts';
import { itemsNamed, sizesOf } from './project.ts';
import { readStock } from './stock-file.ts';

/** Plans the cutting of lines that are all of one kit. Throws where they are not, or not of the counted stock's kit. */
export type CutPlanner = (lines: readonly OrderLine[]) => CutOrder;

/** The planner over the stock file named, or over whole kits; off-cuts may serve every item there is. `edges` says whether panels are cut from edge to edge alone. */
export async function cutPlanner(stockFile: string | undefined, edges: Edges = 'straight'): Promise<CutPlanner> {
  const counted = stockFile === undefined ? null : readStock(stockFile);
  const known = itemsNamed(undefined).flatMap((item) => sizesOf(item).map((size) => buildModel(item, size)));
  const solver = await loadSolver();
  return (lines) => planOrder(lines, counted, known, solver, edges);
}
