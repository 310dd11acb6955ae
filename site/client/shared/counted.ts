/** `1 card`, `2 cards`. */
export const counted = (count: number, what: string): string => `${count} ${what}${count === 1 ? '' : 's'}`;
