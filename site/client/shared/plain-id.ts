/** An id as words, for what has no name where it is said. */
export const plainId = (id: string): string => id.replaceAll('-', ' ');
