import { z } from 'zod';
import { Condition } from './condition.ts';

const say = z.string().min(12).max(240).describe('One or two short sentences.');
const rows = z.array(z.strictObject({ when: Condition, say }));
const done = z.strictObject({
  when: Condition.optional().describe('Said where this is sure; always, if absent.'),
  say,
  'if-not': say.describe('What to do where it is not so.'),
});

/** content/hands.yaml: how a step is done with the tool and on the ground that were told, and when it is done. */
export const Hands = z.strictObject({
  laying: rows.describe('A coat of her own finish, by what lays it.'),
  'by-hand': rows.describe('A coat of her own finish that is surely laid by hand, whatever she coats with.'),
  sanding: rows.describe('By what lies below.'),
  done: z
    .partialRecord(z.enum(['scrape', 'sand', 'mix', 'coat', 'strip']), done)
    .describe(
      'By kind of step, where the step itself does not say it. A wait has none, since to try a film with paper is to sand it; nor has a wipe, which may lay something on as well as take it off.',
    ),
});
export type Hands = z.infer<typeof Hands>;
