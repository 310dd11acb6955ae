/** Paint colors a board can have; the reflectances are in engine/board/base.ts. */
export const PAINTS = ['white', 'cream', 'gray', 'sage', 'navy', 'black', 'red', 'duck-egg'] as const;
export const WOODS = ['oak', 'pine', 'walnut', 'maple', 'mahogany', 'cherry'] as const;
export const SHEEN_NAMES = ['matte', 'eggshell', 'satin', 'semi-gloss', 'gloss', 'high-gloss'] as const;

export type Paint = (typeof PAINTS)[number];
export type Wood = (typeof WOODS)[number];
export type Sheen = (typeof SHEEN_NAMES)[number];
