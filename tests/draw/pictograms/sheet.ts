import { pictogram, type PictogramName } from '../../../src/draw/pictograms/index.ts';

const cell = { width: 84, height: 66 };
const columns = 10;

/** All pictures side by side with their names, one unit of the grid to a pixel. */
export function sheetSvg(names: readonly PictogramName[]): string {
  const rows = Math.ceil(names.length / columns);
  const pictures = names.map((name, i) => {
    const { svg, width, height } = pictogram(name);
    const [x, y] = [(i % columns) * cell.width + 6, Math.floor(i / columns) * cell.height + 4];
    return `<svg x="${x}" y="${y}" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">${svg}</svg>\n<text x="${x}" y="${y + 56}" font-size="7">${name}</text>`;
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${columns * cell.width} ${rows * cell.height}" font-family="sans-serif">\n${pictures.join('\n')}\n</svg>\n`;
}
