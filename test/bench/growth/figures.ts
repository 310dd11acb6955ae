export type GrowthFigures = { readonly sizes: readonly number[] };
