import { z } from 'zod';
import { FACTS } from './facts.ts';
import { FAMILIES } from './family.ts';
import type { ReplyWords } from './reply-words.ts';
import { PageName } from './said.ts';
import { LENGTH_UNITS, Sizes } from './sizes.ts';
import { WORD_KINDS, type WordKind } from './word-kinds.ts';
import { Wordings } from './wordings.ts';

/**
 * Words in lower case without apostrophes; `a|b` means either word, `=word` this form of it alone. Up to two words may
 * stand between them in a text.
 */
export const Phrase = z.coerce
  .string()
  .regex(
    /^=?[a-z0-9]+(\|=?[a-z0-9]+)*( =?[a-z0-9]+(\|=?[a-z0-9]+)*)*$/,
    'write words in small letters without apostrophes or hyphens; a|b is either word, =word this form alone',
  );
const phrases = z.array(Phrase);
const said = <V extends string>(values: readonly V[]) => z.partialRecord(z.enum(values), phrases);
/** In hours: least, likeliest, most. */
const span = z
  .tuple([z.number(), z.number(), z.number()])
  .refine(([least, likely, most]) => least <= likely && likely <= most, 'write least, likeliest, most');

/** The words before the address of a page, and the page. */
const leads = (of: string) =>
  z.strictObject({ lead: z.string().min(8).max(90), page: PageName }).describe(of);
const sentence = z.string().min(8).max(160);
/** Whole sentences with names in braces, in whose place a time is said. */
const filled = (...names: readonly string[]) =>
  z
    .string()
    .min(20)
    .max(220)
    .refine(
      (says) => [...says.matchAll(/\{([^}]*)\}/g)].every(([, name = '']) => names.includes(name)),
      `in braces write ${names.join(', ')} alone`,
    );

/** A part of a sentence with names in braces. */
const part = (...names: readonly string[]) =>
  z
    .string()
    .min(4)
    .max(80)
    .refine(
      (says) => [...says.matchAll(/\{([^}]*)\}/g)].every(([, name = '']) => names.includes(name)),
      `in braces write ${names.join(', ')} alone`,
    );
const fewWords = z.string().min(2).max(30);

/** content/hear/language.yaml: how people say no, when, how warm and of which layer. */
export const HearLanguage = z.strictObject({
  not: phrases.min(1).describe('Words that turn what follows into its opposite.'),
  'not-denying': phrases.describe('Turns of speech that hold such a word and deny nothing.'),
  'other-tongue': phrases.describe(
    'Words of other languages, accents left out, that are no English words: two of them, and what is understood is not sure.',
  ),
  turns: phrases.describe('Words at which a clause ends.'),
  'not-yet': phrases.describe('What only asks, wishes or plans: no fact.'),
  feared: phrases.describe('What is only feared or guarded against: no sign.'),
  was: phrases.describe('Words of the past.'),
  'no-sign': phrases.describe('What sounds like a sign of a flaw and is none.'),
  'of-bodies': phrases.describe('What is told of a person or an animal and sounds like a sign of a flaw.'),
  'is-over': phrases.describe('Words that tell that what was said before is over.'),
  below: phrases.describe('Words before a layer that lies below the top one.'),
  'on-top': phrases.describe('Words before the top layer.'),
  laid: phrases.describe('Words of laying a coat.'),
  owned: phrases.describe(
    'Words of a piece that was had or bought: its film is old, unless work on it is told.',
  ),
  unwiped: phrases.describe('What should have been wiped off, and was not.'),
  'other-time': phrases.describe('Words that tell that a time is of something else.'),
  'other-layer': phrases.describe('Words of a layer below, whose time is not that of the top coat.'),
  'asks-which': phrases.describe('What asks which top coat to take.'),
  'not-which': phrases.describe('What asks for something else, or tells of a coat that lies there.'),
  'still-drying': z
    .strictObject({
      answer: z.string().min(20).max(160).describe('What is said in place of a flaw.'),
      lead: z.string().min(8).max(90).describe('What stands before the address of the page of the flaw.'),
    })
    .describe('Said of a coat that is soft, and within the time that its kind takes to be dry to the touch.'),
  'asks-for': z
    .array(
      z.strictObject({
        heard: phrases.min(1).describe('What asks for it.'),
        unless: phrases.default([]).describe('What tells of a flaw, or asks for something else.'),
        'though-told': z.boolean().default(false).describe('Answered also where the time of a coat is told.'),
        beside: z
          .array(z.string())
          .default([])
          .describe('Questions whose answers may stand beside it: they tell of no flaw.'),
        answer: z.string().min(20).max(260).describe('What a reply says first, in whole sentences.'),
        lead: z.string().min(8).max(90).describe('What stands before the address of the page.'),
        page: PageName.describe('The page that goes on from there.'),
        sands: z
          .boolean()
          .default(false)
          .describe(
            'It says how to sand: not where the film may be young or a child is told of, nor beside a stop.',
          ),
      }),
    )
    .describe('What is asked while nothing is wrong, with its answer and its page.'),
  wordings: Wordings.describe('Wordings that ask for figures of products and plan.'),
  tables: z
    .strictObject({
      clock: leads('Hours of a coat.'),
      waits: leads('How long what lies below dries.'),
      coats: leads('How many coats.'),
      layers: leads('What goes over what.'),
      sanding: leads('What is sanded between coats.'),
      beside: z
        .array(z.string())
        .describe('Questions whose answers may stand beside what is asked: they tell of no flaw.'),
      window: z
        .strictObject({
          ...leads('').shape,
          within: filled('within', 'from').describe('No time is told, or the earlier one is not over.'),
          between: filled('within', 'from', 'age').describe('It is in between: nothing goes on.'),
          waited: filled('from').describe('The later one is over, or the can names one time alone.'),
          'too-soon': filled('from', 'age').describe('The can names one time alone, and it is not over.'),
          slowed: filled('from', 'there', 'here', 'least', 'most').describe(
            'In other air than the can names: how long it takes there.',
          ),
          more: filled('age', 'rest').describe('Behind it: how much of that is left.'),
          soon: filled('age').describe('Behind it: it may be over.'),
          counted: sentence.describe('Behind it, where no age is told.'),
          'put-in': z.string().min(8).max(90).describe('What stands before the address of the clock.'),
          clock: PageName.describe('The page of the clock.'),
        })
        .describe(
          'The next coat by the times of her own can: `{within}` and `{from}` are these, `{age}` how old the coat is.',
        ),
      ahead: leads('A question before the work that no page answers.').extend({
        answer: sentence.describe('What is said of it.'),
      }),
      outside: leads('The same in air that no can of the kinds allows.').extend({
        answer: sentence.describe('What is said of it.'),
      }),
      dew: z
        .strictObject({
          ...leads('').shape,
          no: filled('gap').describe('It is too near.'),
          yes: filled('gap').describe('It is far enough.'),
          fast: sentence.describe('Of finishes that dry fast.'),
        })
        .describe('A surface that was measured beside the dew point: `{gap}` is how far it is above it.'),
      film: z
        .strictObject({
          ...leads('').shape,
          leaves: filled('wet', 'solids', 'dry').describe('What a wet film leaves.'),
          asks: filled('wet', 'solids', 'dry').describe(
            'What is laid wet for a dry film that is told alone.',
          ),
          heavy: filled('target', 'aim', 'share').describe('It is heavier than the can asks for.'),
          thin: filled('target', 'aim', 'share').describe('It is thinner.'),
          fits: filled('target', 'aim').describe('It is as the can asks for.'),
        })
        .describe(
          'A wet film that was measured, and the can: `{wet}`, `{dry}`, the `{target}` dry film of the can and the `{aim}`, the wet one that it takes.',
        ),
      amount: z
        .strictObject({
          ...leads('').shape,
          covers: z
            .string()
            .min(8)
            .max(160)
            .describe('What a coat covers: `{kinds}` is each kind with its figures.'),
          rest: sentence.describe('How an amount comes of it.'),
          faces: part('count', 'size', 'sides').describe('The faces of one size.'),
          one: part('size', 'sides').describe('The faces of one alone.'),
          round: part('size').describe('The size of a round one.'),
          'one-face': fewWords.describe('One face of one part.'),
          'one-face-each': fewWords.describe('One face of each of several.'),
          'both-faces': fewWords.describe('Both faces.'),
          area: part('faces', 'area').describe('What the faces come to.'),
          missing: part('parts').describe('Parts that are named without a size.'),
          taken: part('size', 'unit').describe('A size that is told without a unit.'),
          units: z.record(z.enum(LENGTH_UNITS), fewWords).describe('What the units are called there.'),
          'a-coat': part('amount').describe('The amount of one coat.'),
          'all-coats': part('amount', 'count').describe('That of all coats.'),
          each: fewWords.describe('Between a kind and its amount.'),
          'at-usual': filled('coverage', 'loss').describe('What it was reckoned with.'),
          'at-usual-in-short': filled('loss').describe('The same in fewer words.'),
          'at-can': filled('coverage', 'amounts', 'loss', 'bought').describe(
            'Reckoned with what the can is told to cover.',
          ),
          enough: part('volume').describe('A can that was asked about is enough.'),
          'not-enough': part('volume').describe('It is not.'),
          'just-enough': part('volume').describe('It lies between the ends of what is needed.'),
        })
        .describe('How much of a coat is needed.'),
      sizes: Sizes,
      degrees: filled('told', 'degrees').describe('As what degrees without a unit were taken.'),
      'no-wax': sentence.describe('Where wax is asked for between paint and a film.'),
      painted: sentence.describe('Of a top coat over paint that no row of the plan keeps apart.'),
      air: sentence.describe('Behind hours of a coat: the air that they hold for.'),
      unsaid: sentence.describe('Before hours of several kinds, where none is told.'),
      'wax-waits': sentence.describe('Before the hours of what lies below wax.'),
      can: sentence.describe('Whose word wins.'),
      thin: sentence.describe('Behind a number of coats.'),
      bare: sentence.describe('Behind hours until use: how it is kept until then.'),
      powders: sentence.describe('Behind hours or a grit: when a film can be sanded.'),
      fits: sentence.describe('Of layers that no row of the plan keeps apart: what has to be so first.'),
    })
    .describe(
      'What stands around figures that a reply takes from the products and the plan. The pages that it leads to say what it rests on.',
    ),
  'one-slip': z
    .array(z.string().regex(/^[a-z]{6,}$/, 'write one word of six small letters or more'))
    .describe('Names of coats that are understood with one slip: `polyurthane`.'),
  'air-units': z
    .record(z.string().regex(/^[a-z]{5,}$/), z.string().regex(/^[a-z]+$/))
    .describe(
      'What measures the air, understood with a slip (`humidty`), each with a short form that the ear knows, too.',
    ),
  alone: said(FACTS.stage.values).describe(
    'The end of a short query that says how dry it is and no more: `milky over navy, wet`.',
  ),
  times: z.record(Phrase, span).describe('Spans said in words, in hours.'),
  numbers: z.record(Phrase, z.number()),
  units: z.record(Phrase, z.number()).describe('Units of time, in hours.'),
  ago: phrases.describe('Words beside a span that tell how long ago it was.'),
  'air-celsius': z.record(Phrase, z.number()).describe('Weather in words, °C.'),
  'relative-humidity': z.record(Phrase, z.number()).describe('Weather in words, 0–1.'),
});
export type HearLanguage = z.infer<typeof HearLanguage>;

/** content/hear/facts.yaml: what people say for each value of a fact. */
export const HearFacts = z.strictObject({
  family: z.strictObject({
    ...(Object.fromEntries(FAMILIES.map((family) => [family, phrases.optional()])) as Record<
      (typeof FAMILIES)[number],
      z.ZodOptional<typeof phrases>
    >),
    among: z
      .array(z.strictObject({ say: Phrase, values: z.array(z.enum(FAMILIES)).min(2) }))
      .default([])
      .describe('Words that leave several kinds open.'),
  }),
  sheen: said(FACTS.sheen.values),
  'base-tone': said(FACTS['base-tone'].values),
  base: said(FACTS.base.values),
  applicator: said(FACTS.applicator.values),
  age: said(FACTS.age.values),
  piece: said(FACTS.piece.values),
  hardener: said(FACTS.hardener.values),
  part: said(FACTS.part.values),
  stage: said(FACTS.stage.values),
  overdue: said(FACTS.overdue.values),
  'no-fact': phrases.describe('What sounds like a fact and is none.'),
});
export type HearFacts = z.infer<typeof HearFacts>;

const word = z.string().regex(/^[a-z0-9]+$/, 'write one word in small letters without an apostrophe');

/** content/hear/word-kinds.yaml: the words of each kind that the ear tells apart. */
export const HearWordKinds = z.strictObject(
  Object.fromEntries(
    Object.entries(WORD_KINDS).map(([kind, what]) => [kind, z.array(word).min(1).describe(what)]),
  ) as Record<WordKind, z.ZodArray<typeof word>>,
);
export type HearWordKinds = z.infer<typeof HearWordKinds>;

/** content/hear/questions.yaml: what people say that answers a question unasked. */
export const HearQuestions = z.record(
  z.string(),
  z.strictObject({
    of: z
      .literal('work')
      .optional()
      .describe('It asks of work with coats, tools and cans: what is only planned is no answer to it.'),
    yes: phrases.default([]),
    no: phrases.default([]),
  }),
);
export type HearQuestions = z.infer<typeof HearQuestions>;

/** content/hear/flaws.yaml: what flaws are plainly called. */
export const HearFlaws = z.strictObject({
  whole: phrases.describe('Names of which a part alone would say something else.'),
  small: z.array(word).min(1).describe('Words that may stand beside a name that is one only alone.'),
  names: z
    .array(
      z.strictObject({
        is: z
          .array(z.string())
          .min(1)
          .describe('The flaws that are called so; where the kind of finish is told, those met on it.'),
        say: phrases.min(1).describe('What names it wherever it stands.'),
        alone: phrases
          .default([])
          .describe('What names it only where nothing but small words stands beside it.'),
      }),
    )
    .min(1),
});
export type HearFlaws = z.infer<typeof HearFlaws>;

/** What the ear knows, as an author writes it. */
export type HearContent = {
  readonly language: HearLanguage;
  readonly facts: HearFacts;
  readonly questions: HearQuestions;
  readonly flaws: HearFlaws;
  readonly kinds: HearWordKinds;
  readonly reply: ReplyWords;
};
