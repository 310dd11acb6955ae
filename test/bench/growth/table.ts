import type { GrowthFigures } from './figures.ts';
export const growthTables = (_: GrowthFigures): string => '';
