import { z } from 'zod';
// Placeholder until the product schema is written to this file.
export const Product = z.looseObject({});
export type Product = z.infer<typeof Product>;
