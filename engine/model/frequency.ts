/** How often a refinisher meets a flaw; the numbers weight the search for it. Our estimate. */
export const FREQUENCY = { common: 9, occasional: 3, rare: 1 } as const;
