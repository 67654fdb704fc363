/** A figure as it was typed: none, one within its range, or not one. */
export type FigureReading =
  | { readonly ok: true; readonly value: number | undefined }
  | { readonly ok: false };

/** Reads a figure that may be left out; a comma does for the point, and a minus may be the typographer's. */
export function readFigure(text: string, least: number, most: number): FigureReading {
  const tidy = text.trim().replace(',', '.').replace('−', '-');
  if (tidy === '') return { ok: true, value: undefined };
  if (!/^-?\d+(\.\d+)?$/.test(tidy)) return { ok: false };
  const value = Number(tidy);
  return value >= least && value <= most ? { ok: true, value } : { ok: false };
}
