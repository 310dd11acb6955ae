import { z } from 'zod';
import { FACTS } from './facts.ts';
import { FAMILIES } from './family.ts';
import { HAZARD_NAMES } from './hazard.ts';
import { DefectId, ProductId, RuleId, SourceId } from './ids.ts';
import { saying } from './saying.ts';
import { GRADES } from './source.ts';
import { GRITS } from './step.ts';

/** How hard the piece will be used. */
export const WEARS = ['low', 'normal', 'high'] as const;
/** What the buyer does to it, beside wear. */
export const TRIALS = ['water', 'heat', 'child', 'food'] as const;
/** The parts whose sizes are asked. */
export const PARTS = ['top', 'side', 'front', 'leg'] as const;
/** The parts that may come off and be turned: loose tops and shelves, drawer fronts and doors. */
export const LOOSE_PARTS = ['top', 'front'] as const;
/**
 * When a part is turned that is coated on both faces. `each-coat`: after each coat, back then front. `each-face`: once,
 * when the back has all its coats.
 */
export const TURNINGS = ['each-coat', 'each-face'] as const;
/** What is said of the turning, and where. */
const TURN_WORDS = ['wait', 'front-up', 'back-up', 'once', 'edges', 'rest'] as const;
/** When to look, and for what. */
const LOOKS = ['laid', 'dry', 'sanded', 'second', 'last', 'handed-over'] as const;

/** How easily sanding goes through to the color. `no-film`: the finish lies in the wood, and is not sanded. */
export const SAND_RISKS = ['bare', 'no-film', 'unknown', 'high', 'some', 'low'] as const;

const grounds = {
  grade: z.enum(GRADES).describe('How we know it.'),
  source: SourceId.optional().describe('A file in content/sources; needed for published and from-memory.'),
};

/** A row of a table that names its ground. */
const row = <S extends z.ZodRawShape>(shape: S) => z.strictObject({ ...shape, ...grounds });

const span = (min: number, max: number) =>
  z
    .tuple([z.number().min(min).max(max), z.number().min(min).max(max)])
    .refine(([from, to]) => from <= to, 'write the smaller number first');

const Base = z.enum(FACTS.base.values);
const Family = z.enum(FAMILIES);
const bases = z.array(Base).optional().describe('Only over these; over all where left out.');
const families = z.array(Family).optional().describe('Only for these; for all where left out.');
const products = z.array(ProductId).optional().describe('Only these kinds of product.');

const Part = z
  .strictObject({
    count: z.int().min(0).max(60),
    long: z.number().min(0).max(5000).describe('Length or height, mm.'),
    wide: z.number().min(0).max(5000).describe('Width, mm; of a leg, its thickness.'),
  })
  .describe('Equal faces of one kind.');

const film = z.number().min(1).max(1000).describe('Dry film, µm.');

/** What a film allows before it is sanded, and the sentences that tell it. */
export const Sanding = z.strictObject({
  thin: row({ micrometers: film }).describe('Below this a film is thin.'),
  bears: row({ micrometers: film }).describe('From this on it bears a light rub.'),
  coats: row({ least: z.int().min(1).max(10).describe('A film of fewer coats counts as thin.') }),
  'in-the-wood': z.array(Family).describe('Finishes that make no film to sand.'),
  says: z.record(
    z.enum(SAND_RISKS),
    z.strictObject({ say: z.string().min(20), grounds: z.array(z.strictObject(grounds)).min(1) }),
  ),
  'too-thick': z
    .array(
      row({ families, micrometers: film, say: z.string().min(20) }).superRefine(
        ({ micrometers, say }, context) => {
          if (say.includes(`${micrometers} µm`)) return;
          const told = say.match(/[\d.]+ µm/)?.[0] ?? 'no thickness in µm';
          context.addIssue({
            code: 'custom',
            message: `the words after say: tell ${told} and micrometers: is ${micrometers}; write the same in both`,
          });
        },
      ),
    )
    .min(1),
});
export type Sanding = z.infer<typeof Sanding>;

/** Why a coat is not laid, or not yet, where no row of another table forbids it, and what to do instead. */
const Noes = z.strictObject({
  'flaw-open': row({
    why: saying('A flaw is open on the card of the piece.'),
    instead: saying('What comes first.'),
  }),
  'flaw-repaired': row({
    why: saying('Its repair is noted, and nobody has said that it is gone.'),
    instead: saying('What comes first.'),
  }),
  'too-thick': row({ instead: saying('The film bears no further coat.') }),
  'too-early': row({ why: saying('The coat below is not ready for another.') }),
  closed: row({ why: saying('Its time for another is over, and comes again.') }),
  'base-too-fresh': row({ instead: saying('The base is too fresh for any coat of this kind.') }),
  tool: row({
    why: saying('The product is not laid with the tool that was told.', 'product'),
    instead: saying('Which tools lay it.', 'tools'),
  }),
  night: row({
    why: saying('A night spoils the coat, and how.', 'how'),
    instead: saying('What to do about it.'),
  }),
  'no-day': row({ why: saying('No day to work on was told.') }),
  'hours-too-short': row({
    why: saying('No day has the hours for a coat, minutes.', 'session', 'hours'),
    instead: saying('What to do about it, on no day too.'),
  }),
  'film-too-old': row({
    why: saying('With isocyanate in the film the next coat comes too late to go on unsanded.', 'coat'),
    instead: saying('What to do about it.'),
    'instead-turned': saying('The same, where parts are turned after each coat.'),
  }),
});

const Does = z
  .array(z.enum(HAZARD_NAMES))
  .min(1)
  .optional()
  .describe('What it does that only its words tell.');

/** What planning a job rests on: tables that a practitioner can read and correct. */
export const Plan = z.strictObject({
  presets: z.array(
    z.strictObject({
      id: z.string(),
      name: z.string(),
      wear: z.enum(WEARS),
      piece: z.enum(FACTS.piece.values),
      trials: z.array(z.enum(TRIALS)).default([]),
      parts: z.record(z.enum(PARTS), Part),
    }),
  ),
  extra: row({ share: z.number().min(0).max(1).describe('Added to the area for moldings and edges, 0–1.') }),
  coats: z.array(
    row({
      families: z.array(Family).min(1),
      products,
      wear: z.record(z.enum(WEARS), z.int().min(1).max(12)).describe('Coats by wear.'),
      most: z.int().min(1).max(12).describe('Never more than this.'),
    }),
  ),
  film: z.array(
    row({
      families: z.array(Family).min(1),
      target: z.record(z.enum(WEARS), z.number()).describe('Least dry film by wear, µm.'),
      most: z.number().describe('Never more dry film than this, µm.'),
    }),
  ),
  tools: z.array(
    row({
      applicator: z.enum(FACTS.applicator.values),
      loss: span(0, 1).describe('Share lost in the tool or the air, 0–1.'),
      'load-milliliters': z.number().min(1).max(1000),
      'band-millimeters': z.number().min(10).max(500).describe('Width of one stroke.'),
      'square-meters-per-minute': z.number().min(0.01).max(5),
    }),
  ),
  thirst: row({
    bases: z.array(Base),
    times: z.number().min(1).max(3).describe('First coat takes so much more.'),
  }),
  cans: z.array(
    z.strictObject({
      units: z.enum(['metric', 'us']),
      name: z.string(),
      liters: z.number().min(0.01).max(20),
      aerosol: z.boolean().default(false),
    }),
  ),
  spare: row({ share: z.number().min(0).max(1).describe('Bought beyond what the plan lays, 0–1.') }),
  fitness: z.array(
    row({
      verdict: z.enum(['no', 'care']),
      families,
      products,
      wear: z.array(z.enum(WEARS)).optional(),
      trials: z.array(z.enum(TRIALS)).optional().describe('With any of these.'),
      bases,
      below: z.array(Family).optional().describe('Only over a coat of her own of one of these finishes.'),
      tones: z.array(z.enum(FACTS['base-tone'].values)).optional(),
      sheens: z.array(z.enum(FACTS.sheen.values)).optional(),
      why: z.string().min(20),
      instead: z.string().min(8).describe('What to do instead.'),
    }),
  ),
  picks: z
    .array(
      row({
        product: ProductId,
        wear: z.array(z.enum(WEARS)).optional(),
        bases,
        tones: z.array(z.enum(FACTS['base-tone'].values)).optional(),
        why: z.string().min(20).describe('Why this one, in a sentence or two.'),
      }),
    )
    .min(1)
    .describe('What is recommended where one may choose; of two with as little to mind the first.'),
  waits: z.array(
    row({
      bases: z.array(Base).min(1),
      families,
      hours: z.number().min(1).max(1000).describe('Age of the base at 20 °C before the first coat, hours.'),
      refuse: z.boolean().default(false).describe('Too early is a no, not a wait.'),
      why: z.string().min(20),
    }),
  ),
  over: z
    .array(
      row({
        below: z.array(Family).min(1).describe('Finish of the coat below, one of her own.'),
        families: z.array(Family).min(1),
        hours: z
          .number()
          .min(1)
          .max(2000)
          .optional()
          .describe('Age of the coat below from which on it is fit, hours; never, where it is left out.'),
        why: z.string().min(20),
        instead: z.string().min(8).describe('What to do instead.'),
      }),
    )
    .describe('What may not be laid, or not yet, over a coat of another finish.'),
  'test-patch': z.array(
    row({
      bases: z.array(Base).min(1),
      families,
      hours: z.number().min(1).max(200),
      why: z.string().min(20),
    }),
  ),
  wash: z
    .array(
      row({
        bases: z.array(Base).min(1),
        hours: z.number().min(0.1).max(200).describe('To dry before anything else is done to it, hours.'),
        say: z.string().min(12),
        does: Does,
      }),
    )
    .describe('What is washed off a base before a test patch and before paper.'),
  prepare: z.array(
    row({
      bases: z.array(Base).min(1),
      grit: z.literal(GRITS).optional().describe('FEPA P grade; none where the base is not sanded.'),
      say: z.string().min(12),
      does: Does,
    }),
  ),
  between: z.array(
    row({
      families: z.array(Family).min(1),
      grit: z.literal(GRITS).optional().describe('FEPA P grade; none where it is not sanded.'),
      say: z.string().min(12),
      does: Does,
    }),
  ),
  buff: z
    .array(row({ families: z.array(Family).min(1), say: z.string().min(12) }))
    .describe('What is buffed once in the hour it is laid, when it is dry to the touch.'),
  turn: z
    .strictObject({
      minutes: row({ 'a-part': z.number().min(0).max(60).describe('To turn one part, minutes.') }),
      handled: z.array(
        row({
          families: z.array(Family).min(1),
          products,
          hours: span(0, 100).describe(
            'From when on a coat can be turned, hours at 23 °C and 50 %; 0 where it is wiped off and leaves no film to print. Where no row is, as soon as it takes the next coat.',
          ),
        }),
      ),
      'all-coats': row({
        hours: z
          .number()
          .min(1)
          .max(500)
          .describe(
            'From when on a face with all its coats lies while the other gets its own, hours at 23 °C.',
          ),
      }),
      says: z.record(z.enum(TURN_WORDS), row({ say: z.string().min(12) })),
    })
    .describe('What is coated on both faces: when it can be turned, and how.'),
  closed: z
    .strictObject({
      within: row({ say: saying('Of a coat that goes on before them.', 'within', 'after') }),
      again: row({ say: saying('The same of those behind it.', 'within') }),
      after: row({ say: saying('Of the wait for one that goes on behind them.', 'within', 'after') }),
    })
    .describe('What is said of a coat over one that takes no other for some hours.'),
  looks: z.array(
    z.strictObject({
      when: z.enum(LOOKS),
      families,
      bases,
      defects: z.array(DefectId).min(1),
      say: z.string().min(12),
    }),
  ),
  work: row({
    'sand-minutes-per-square-meter': z.number(),
    'set-up-minutes': z.number(),
    'wipe-minutes': z.number().describe('Wiping and letting the surface dry.'),
    'look-minutes': z.number(),
  }),
  handle: row({ hours: z.number() }),
  airing: z.array(
    row({
      families: z.array(Family).min(1),
      days: z.number().describe('Least days from the last coat to hand-over.'),
    }),
  ),
  careful: row({ days: z.number().describe('Least days to full use for children, food, heat, water.') }),
  night: row({
    from: z.int(),
    to: z.int(),
    'most-humidity': z.number(),
    'supposed-colder': z.number().min(0).max(20),
  }).describe(
    'Minutes of the day between which it is night; the dampest night reckoned when she measured none; how much colder, °C, than the day a job card and a plan take it to be where none is told.',
  ),
  sanding: Sanding,
  noes: Noes.describe('What is said of a coat that no row of another table forbids.'),
  refuse: z.array(RuleId).describe('Rules that end a plan when they fire on its facts and steps.'),
});
export type Plan = z.infer<typeof Plan>;
