import { z } from 'zod';

const number = z
  .string()
  .regex(/^\d[\d -]*\d$/, { error: 'Write a number as it is dialed, with blanks or hyphens between.' });

/** content/calls.yaml: whom to call in each country, once something has happened. */
export const Calls = z.strictObject({
  places: z
    .array(
      z.strictObject({
        place: z.string().min(4).max(24).describe('The country as it is said to readers, such as “the UK”.'),
        regions: z
          .array(z.string().regex(/^[A-Z]{2}$/))
          .min(1)
          .describe('Its codes (ISO 3166-1); EU for all of Europe that has no row.'),
        emergency: number.describe('The emergency number.'),
        poison: z
          .strictObject({
            number,
            name: z.string().max(24).optional().describe('What the line is called, where it has a name.'),
          })
          .optional()
          .describe('Its one poison line; left out where a country has several, or none that was found.'),
      }),
    )
    .min(1),
});
export type Calls = z.infer<typeof Calls>;
export type CallPlace = Calls['places'][number];
