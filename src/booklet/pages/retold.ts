/** What the pages tell, for a form of the booklet that is set otherwise: nothing here knows of paper. */
export { picturesOf } from './bands.ts';
export { cautionOrder, toolSizesText, totalMinutes, toolOrder, workCautions } from './before.tsx';
export { caption } from './captions.ts';
export { chapterGlyph, type ChapterName } from './chapter-glyphs.ts';
export { finishedAlt } from './cover.tsx';
export { signForWhom } from './for-whom.ts';
export { checksOf } from './last-checks.tsx';
export { withNumeral } from './load-figures.tsx';
export { loadInKilograms } from './load-in-kilograms.ts';
export { marginParts, suppliesSaid } from './margin-parts.ts';
export { itemAndSize, itemName, overall, sizeName } from './names.ts';
export { partName, partsCounted } from './part-names.ts';
export { countKey, countsBySize, sizeText } from './part-sizes.ts';
export { loadsSaid, printedLoads } from './place-loads.ts';
export { roundGlyph, roundOf } from './round.ts';
export { useCautions } from './safe-load.tsx';
export { sizeFronts } from './size-mark.tsx';
export { stepAlt } from './step-alt.ts';
