import { z } from 'zod';

/**
 * How the names in a table may begin, for a hint where one is misspelled: whole names, and kinds with their `/`, behind
 * which any id may stand.
 */
export const STARTS: z.core.$ZodRegistry<{ readonly starts: readonly string[] }> = z.registry();
