import type { Model, Solids } from '../model/index.ts';
import { finishedScene } from '../scene/index.ts';
import { cachedDrawer } from './item-pictures.ts';
import { composePicture } from './picture/index.ts';
import { pictureAs } from './picture-of.ts';
import type { Picture } from './types.ts';

/** The finished item alone, as on a workshop pack's cover; `place` is the item's in the order, from 0. */
export const finishedPicture = (model: Model, solids: Solids, place: number): Picture =>
  pictureAs({ what: 'ordered', place }, composePicture(finishedScene(model, solids), { width: 120, height: 100 }, cachedDrawer()));
