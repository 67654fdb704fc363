/** Stands in an address for "no ground": an id is never empty, and this is no id that is made here. */
export const NO_GROUND = '-';

const part = (id: string | null): string => (id === null ? NO_GROUND : encodeURIComponent(id));

export const groundAddress = (ground: string | null): string => `/grounds/${part(ground)}`;
export const layoutAddress = (ground: string | null, layout: string): string =>
  `${groundAddress(ground)}/${encodeURIComponent(layout)}`;
/** Where a new layout is drawn, from one of the layouts to begin from or from an empty field. */
export const newLayoutAddress = (ground: string | null, start: string): string =>
  `${groundAddress(ground)}/new/${encodeURIComponent(start)}`;
