import { z } from 'zod';
import {
  named,
  off,
  type Said,
  type SaysOf,
  saidHandsOff,
  sentenceShape,
  sentencesOf,
  told,
} from './sentences.ts';
import { Wording } from './wordings.ts';

/** Every sentence of a reply to somebody's post that is none of a page, a rule or a product. */
const REPLY_SAYS = {
  what: {
    unsure: named('No flaw is likely enough to be named alone.', 'names'),
    or: named('Between the names in it.', 'name', 'more'),
    other: named('Before the address of a flaw that may be the one as well.', 'name'),
    besides: named('Before the address of a flaw that was named, too.', 'name'),
  },
  hold: {
    open: off('Until it is known, the coat is left alone.', 'open'),
    'which-it-is': named('What is open: the flaw.'),
    'what-mends-it': named('What is open: the repair.'),
    'how-dry-it-is': named('What is open: the stage.'),
    wary: off('Behind what is done while the flaw is not sure.'),
    'until-known': off('Two flaws call for other hands.', 'verdict', 'not'),
    kept: told('The coat stays: nobody has to fear for it.'),
    sets: off('It was laid so short a time ago that it sets, whatever it shows.'),
    'over-wax': told('A film over wax was asked for.'),
    no: named('What was asked about is not done.', 'hands'),
    'not-yet': named('The same of a coat that is dry.', 'hands'),
    'no-two': named('Between two things that are not done.', 'one', 'other'),
  },
  ask: {
    check: named('A question of the walk, and how that is seen.', 'ask', 'how'),
    dry: off('How dry it is, where its time is told.'),
    'dry-and-when': named('How dry it is, and when it was laid.'),
    below: named('How old what lies below is.'),
  },
  lead: {
    steps: named('Before the address of a flaw whose hands are known.'),
    questions: named('The same where a question or two are left.'),
    what: named('The same where it is not known.'),
    'coat-after': named('The same behind a call for help.'),
    rule: named('Before the address of a rule.'),
    which: named('Before the page that names a top coat.'),
    page: named('Before the address of a page.', 'title'),
    feared: named('Before the address of a flaw that is only feared.'),
    tell: named('Where more can be told.'),
    'tell-again': named('The same where nothing is wrong.'),
  },
  nothing: {
    welcome: named('Thanks are told.'),
    wrong: named('Nothing is told that is wrong.'),
    feared: named('A flaw is asked about that is not there.', 'flaw'),
    'other-tongue': named('The words are of another language.'),
    unknown: named('The words tell too little.'),
    leave: off('What holds until they tell more.'),
    'tell-more': named('What is to be told.'),
  },
  rules: {
    first: named('Before the most pressing rule.', 'says'),
    also: named('Before any other.', 'says'),
  },
} satisfies Readonly<Record<string, Readonly<Record<string, Said>>>>;

/** What hands ask to be allowed. */
const HANDS = ['wipe', 'coat', 'sand', 'brush', 'pop', 'scrape', 'strip', 'heat', 'touch'] as const;
export type AskedHand = (typeof HANDS)[number];

const wordings = z.array(Wording).min(1);
const words = z.array(z.string().regex(/^[A-Za-z ’']+$/, 'write words of letters')).min(1);

const Names = z
  .strictObject({
    several: words.describe('A name with one of these tells of many: "Runs and sags".'),
    where: words.describe('Words at which a name turns to where or of what it is: "Marks from heat".'),
    one: words.describe('A name of one of these takes an article: "a milky coat".'),
    'one-of-it': words.describe('None where one of these stands before it: "specks in the film".'),
    whole: words.describe('A name that begins so …'),
    tells: words.describe('… and goes on with one of these is a sentence of its own.'),
  })
  .describe('How the name of a flaw stands in a sentence.');

const Sure = z
  .array(
    z.strictObject({
      from: z.number().min(0).max(1).describe('The least chance.'),
      one: z.string().min(3).describe('Before a name.'),
      several: z.string().min(3).describe('Before a name of many.'),
      whole: z.string().min(3).describe('Before a name that is a sentence.'),
    }),
  )
  .min(1)
  .refine(
    (rows) => rows.every(({ from }, at) => from < (rows[at - 1]?.from ?? 2)),
    'write the surest first: each row begins below the one before it',
  )
  .describe('How sure it is said, surest first: never surer than the chance.');

const denied = z
  .string()
  .min(5)
  .max(60)
  .describe('How it is denied; {it} is the word for what is meant, where it is said.');

const Hands = z.strictObject(
  Object.fromEntries(
    HANDS.map((hand) => [
      hand,
      z.strictObject({
        said: wordings.describe('What names it.'),
        unless: wordings.optional().describe('What sounds like it and is something else.'),
        denied,
      }),
    ]),
  ) as Record<
    AskedHand,
    z.ZodObject<{ said: typeof wordings; unless: z.ZodOptional<typeof wordings>; denied: typeof denied }>
  >,
);

/** content/hear/reply.yaml: what a reply says around flaws, rules and products, and what it listens for. */
export const ReplyTable = z.strictObject({
  sure: Sure,
  names: Names,
  asks: wordings.describe('A question of hands: may I, should she, is it all right to.'),
  spared: words.describe('Words before what is not wanted: "no sanding please".'),
  them: words.describe('Words that stand for several things.'),
  hands: Hands.describe('What is asked of hands. A reply answers that first.'),
  thanks: wordings.describe('Somebody thanks.'),
  glad: wordings.describe('Somebody is glad of how it came out.'),
  'asks-on': wordings.describe('Somebody who thanks or is glad, and asks all the same.'),
  'not-asking': wordings.describe('What sounds so and asks nothing.'),
  ...sentenceShape(REPLY_SAYS),
});
export type ReplyTable = z.infer<typeof ReplyTable>;

export const REPLY_HANDS_OFF = saidHandsOff(REPLY_SAYS);

/** The sentences of a table alone. */
export const replySaysOf = (table: ReplyTable): ReplyWords['says'] => sentencesOf(REPLY_SAYS, table);

/** The same as it is sent: patterns in place of wordings, and no grounds. */
export type ReplyWords = {
  readonly sure: z.infer<typeof Sure>;
  readonly names: z.infer<typeof Names>;
  readonly asks: string;
  readonly spared: readonly string[];
  readonly them: readonly string[];
  readonly hands: readonly {
    readonly hand: AskedHand;
    readonly said: string;
    readonly unless?: string;
    readonly denied: string;
  }[];
  readonly thanks: string;
  readonly glad: string;
  readonly asksOn: string;
  readonly notAsking: string;
  readonly says: SaysOf<typeof REPLY_SAYS>;
};

/** What a reply says, from its table; `patternOf` makes a pattern of wordings. */
export const replyWordsOf = (
  table: ReplyTable,
  patternOf: (wordings: readonly string[]) => string,
): ReplyWords => ({
  sure: table.sure,
  names: table.names,
  asks: patternOf(table.asks),
  spared: table.spared,
  them: table.them,
  hands: HANDS.map((hand) => {
    const { said, unless, denied: no } = table.hands[hand];
    return { hand, said: patternOf(said), ...(unless && { unless: patternOf(unless) }), denied: no };
  }),
  thanks: patternOf(table.thanks),
  glad: patternOf(table.glad),
  asksOn: patternOf(table['asks-on']),
  notAsking: patternOf(table['not-asking']),
  says: replySaysOf(table),
});
