import { planTubes, type TubeCutPlan } from '../../src/cut/index.ts';
import type { Model } from '../../src/model/index.ts';
import { planItem, type Plan } from '../../src/plan/index.ts';
import type { Item, WallKind } from '../../src/read/index.ts';
import { modelOf, reportOf } from './items.ts';
import { sharedSolids } from './kernel.ts';
import { remembered } from './remembered.ts';

const solids = await sharedSolids();

const planned = remembered((model: Model, order: string, wall: WallKind | null): Plan => planItem(model, JSON.parse(order) as Item['order'], solids, wall));

/** The steps of a model, each motion proven; fixed to no wall unless one is given. The same each time it is asked of that model. */
export const planOnce = (model: Model, order: Item['order'], wall: WallKind | null = null): Plan => planned(model, JSON.stringify(order), wall);

/** The steps of a size as the command plans them: fixed to a wall where its checks say so. */
export const planOf = (item: Item, size: string): Plan => planOnce(modelOf(item, size), item.order, reportOf(item, size).advice.wall);

/** How the tubes of a model are sawn. */
export const cutsOnce = remembered((model: Model): Promise<TubeCutPlan> => planTubes(model));
