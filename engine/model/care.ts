import { z } from 'zod';
import { FACTS } from './facts.ts';
import { FAMILIES } from './family.ts';
import { SourceId } from './ids.ts';
import { TRIALS } from './plan.ts';
import { GRADES } from './source.ts';

/** The dates that a piece is handed over with, in their order. */
const CARE_DATES = ['hand-over', 'light-use', 'full-use'] as const;

const conditions = {
  families: z.array(z.enum(FAMILIES)).min(1).optional().describe('Only where the top coat is one of these.'),
  bases: z.array(z.enum(FACTS.base.values)).min(1).optional().describe('Only over these.'),
  kinds: z.array(z.enum(FACTS.piece.values)).min(1).optional().describe('Only for these pieces.'),
  trials: z.array(z.enum(TRIALS)).min(1).optional().describe('Only where any of these is done to it.'),
  faces: z.literal('both').optional().describe('Only where parts that come off are coated on both faces.'),
  ages: z
    .array(z.enum(FACTS.age.values))
    .min(1)
    .optional()
    .describe('Only with old paint below of this age.'),
};

const grounds = {
  grade: z.enum(GRADES).describe('How we know it.'),
  source: SourceId.optional().describe('A file in content/sources; needed for published and from-memory.'),
};

const row = <S extends z.ZodRawShape>(shape: S) =>
  z.strictObject({
    ...conditions,
    ...shape,
    ...grounds,
  });

const say = z.string().min(12).max(240).describe('One or two short sentences to the buyer.');
const rows = z.array(row({ say }));
/** One sentence, whatever the piece. */
const one = z.strictObject({ say, ...grounds });

/** The sentences of the care card: what the buyer is told, each with its ground. Those that fit are shown, in order. */
export const Care = z.strictObject({
  no: rows.describe('Where one of these fits, there is no care card.'),
  'made-of': rows.describe('What it is finished with, in generic words.'),
  'not-yet': z
    .array(row({ until: z.enum(CARE_DATES), say }))
    .describe('What not to do before a date; the date is set before the sentence.'),
  'no-date': z
    .strictObject({
      'no-coat': one.describe('No coat is on the card.'),
      'no-product': one.describe('What was laid last is not known here.'),
      'no-time': one.describe('The air lets no time be promised; what is wrong with it is said behind.'),
    })
    .describe('Why there are no dates, and what to do.'),
  cleaning: rows,
  upkeep: rows,
  cautions: rows,
  promise: rows.describe('What is not promised.'),
});
export type Care = z.infer<typeof Care>;
