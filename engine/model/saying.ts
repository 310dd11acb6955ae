import { z } from 'zod';
import { placesIn, type Saying } from '../plain/filled.ts';

/** A sentence in which each of the places stands, and no other: what is said there is filled in. */
export const saying = <P extends string = never>(when: string, ...places: readonly P[]) => {
  const list = places.map((place) => `{${place}}`).join(', ');
  return z
    .string()
    .min(3)
    .describe(`What is said: ${when}${list && ` Filled in: ${list}.`}`)
    .superRefine((text, context) => {
      const there = placesIn(text);
      const strange = there.find((place) => !places.some((one) => one === place));
      const missing = places.find((place) => !there.includes(place));
      const told = strange
        ? `{${strange}} is no place of this sentence; write ${list || 'it out, for nothing is filled in here'}`
        : missing && `{${missing}} is missing in this sentence; write it where it is filled in`;
      if (told) context.addIssue({ code: 'custom', message: told });
    }) as z.ZodType<Saying<P>, string>;
};
