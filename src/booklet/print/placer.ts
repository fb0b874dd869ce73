import type { PDFDocument, PDFPage } from 'pdf-lib';
import { PAPERS } from '../papers/index.ts';
import { POINTS_PER_MM } from './units.ts';
import type { AnyPaper, PrintDocument } from './types.ts';

/** Boxes are told to this part of a point. */
const PARTS = 100;

/**
 * Puts pages that are smaller than their paper in its middle: only the box of each page is another, so that all that
 * stands on it keeps its place (ISO 32000-1, 14.11.2: a box may begin anywhere). Pages as large as their paper are left as they are.
 */
export function placer(pdf: PDFDocument, { field }: Pick<PrintDocument, 'field'>): (paper: AnyPaper) => void {
  if (!field) return () => undefined;
  const pages = pdf.getPages().map((page) => ({ page, printed: page.getSize() }));
  return (paper) => {
    const { width, height } = PAPERS[paper];
    for (const { page, printed } of pages) setBox(page, printed, { width: width * POINTS_PER_MM, height: height * POINTS_PER_MM });
  };
}

interface Size { readonly width: number; readonly height: number }

function setBox(page: PDFPage, printed: Size, paper: Size): void {
  const white = (of: 'width' | 'height'): number => Math.round((PARTS * (paper[of] - printed[of])) / 2) / PARTS;
  page.setMediaBox(-white('width'), -white('height'), rounded(printed.width + 2 * white('width')), rounded(printed.height + 2 * white('height')));
}

const rounded = (points: number): number => Math.round(PARTS * points) / PARTS;
