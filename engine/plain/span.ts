/** The least and the most of one quantity; its unit is said where it is used, and is minutes where a span is of time. */
export type Span = { readonly from: number; readonly to: number };

/** What content writes as `[from, to]`, counted in `unit`. */
export const spanOf = ([from, to]: readonly [number, number], unit = 1): Span => ({
  from: from * unit,
  to: to * unit,
});

/** `4–10`, or one of them where both read alike. */
export const sayEnds = (from: number | string, to: number | string): string =>
  from === to ? String(to) : `${from}–${to}`;
