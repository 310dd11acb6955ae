import { z } from 'zod';
import { Condition } from './condition.ts';
import { HAZARD_NAMES } from './hazard.ts';
import { Phrase } from './hear.ts';
import { SENSES } from './question.ts';
import { Claim } from './source.ts';
import { STAGES } from './stage.ts';
import { NUMBERS, numbersIn, WHOM, type Whom } from './whom.ts';

const RULE_KINDS = ['hold', 'caution', 'adjustment', 'stop'] as const;

const Calls = z
  .array(z.enum(WHOM), {
    error: `write whom its words say to call, in brackets: [${WHOM.join(', ')}]; what lets words call for the rule is fires: true`,
  })
  .default([]);

/**
 * What the trade or safety demands whatever the tree says. A rule fires by facts (`when`), by what the steps ahead do
 * (`hazards`), or by both together. With `unless-known-no`, an unknown fact counts as if it held.
 */
const Fields = z.strictObject({
  kind: z
    .enum(RULE_KINDS)
    .describe(
      'hold: hands off until a stage; caution: before a step; adjustment: a limit; stop: before all else.',
    ),
  level: z
    .enum(['stop', 'care', 'note'])
    .describe('stop: alone on the screen, and only for kind: stop; care: on its step; note: in the sheet.'),
  title: z.string().min(4).describe('What it warns of, in a few words.'),
  also: z.array(z.string().min(3)).default([]).describe('What people type who look for it.'),
  heard: z
    .array(Phrase)
    .default([])
    .describe(
      'What a post says that calls for this rule, whatever else it tells. A rule with neither facts nor hazards is called for by these words alone.',
    ),
  'not-heard': z
    .array(Phrase)
    .default([])
    .describe(
      'What only sounds like it: over these words, where no other stands between, nothing of this rule is heard.',
    ),
  'at-once': z
    .array(
      z.strictObject({
        heard: z.array(Phrase).min(1).describe('What a post says of such a case.'),
        fires: z
          .boolean()
          .default(false)
          .describe('These words call for the rule by themselves, too; the search does not learn them.'),
        calls: Calls.describe(
          'Whom the words of this case say to call, each by the number: somebody has to be called, and the film can wait.',
        ),
        across: z
          .strictObject({
            names: z.array(Phrase).min(1).describe('What does the harm, named anywhere in the post.'),
            heard: z.array(Phrase).min(1).describe('What it does, told anywhere else in the post.'),
          })
          .optional()
          .describe('Such a case told over several sentences; it calls for the rule, too.'),
        unless: z
          .array(Phrase)
          .default([])
          .describe(
            'What takes it back: in the sentence where it stands no words of this case, and none of the rule itself, are heard.',
          ),
        say: z
          .string()
          .min(20)
          .max(260)
          .describe('What saves first, in whole sentences that do alone. It is told before all else.'),
      }),
    )
    .default([])
    .describe(
      'Harm that is under way or about to be done, case by case: what comes first where the rule is called for. `across` holds a case that is told over several sentences: `names` what does the harm, `heard` what it did. `unless` is what makes it none, in the same sentence.',
    ),
  say: z
    .string()
    .min(20)
    .describe('The caution, calm and short. Its first sentence must do alone: a short reply has no more.'),
  calls: Calls.describe(
    'Whom the words of the rule say to call, each by the number, where it is for what has happened already: the film can wait.',
  ),
  lead: z
    .string()
    .min(20)
    .max(100)
    .optional()
    .describe(
      'The caution in one line, which stands at a step with the rest folded below it; its first sentence where left out.',
    ),
  done: z
    .string()
    .min(20)
    .max(140)
    .optional()
    .describe('What is said in its place, behind what to do, where a post tells that the step is over.'),
  'told-last': z
    .boolean()
    .default(false)
    .describe(
      'Facts that call for it do not tell of the step that it guards: a reply says it behind what to do, unless words call for it.',
    ),
  why: z.string().min(20).describe('Why it matters, in one sentence.'),
  when: Condition.optional().describe('The facts that call for it.'),
  'unless-known-no': z.boolean().default(false).describe('Fire also where the facts are unknown.'),
  hazards: z.array(z.enum(HAZARD_NAMES)).default([]).describe('Fires before a step that does one of these.'),
  sure: z
    .enum(['yes', 'maybe'])
    .optional()
    .describe('yes: only where the step surely does it; maybe: only where that hangs on what is not known.'),
  always: z
    .boolean()
    .default(false)
    .describe('Fires by its facts alone; its hazards tell only what it guards against.'),
  open: z
    .string()
    .min(12)
    .optional()
    .describe(
      'For a stop: when, or for which piece, what lies behind it may be done. Begins with If or When.',
    ),
  checks: z
    .array(
      z.strictObject({
        by: z.array(z.enum(SENSES)).min(1),
        wait: z.boolean().default(false).describe('No such check is made until the stop is settled.'),
        say: z.string().min(20).describe('What is said at such a check while the stop stands.'),
      }),
    )
    .default([])
    .describe('What a stop asks of checks of the piece, by the sense or means of the check.'),
  until: z.enum(STAGES).optional().describe('For a hold: hands off until this stage.'),
  limit: z
    .strictObject({
      what: z.enum(['tint-percent', 'thin-percent', 'extender-percent']),
      most: z.number().min(0).max(100),
    })
    .optional()
    .describe('For an adjustment: as far as this and no further.'),
  defers: z
    .string()
    .min(8)
    .describe('Whose word wins: the label, the safety data sheet, local rules, a professional.'),
  claims: z.array(Claim).min(1).describe('Every statement that matters, and how we know it.'),
});

/** Whom to call is decided by `calls` alone, so it may neither lack a number that the words name nor name one more. */
const calledFaults = (
  { calls, say }: { readonly calls: readonly Whom[]; readonly say: string },
  path: readonly PropertyKey[],
): readonly { readonly path: PropertyKey[]; readonly message: string }[] => {
  const named = numbersIn(say);
  return [
    ...named
      .filter((whom) => !calls.includes(whom))
      .map((whom) => ({
        path: [...path, 'say'],
        message: `these words name ${NUMBERS[whom]}; add a line calls: [${named.join(', ')}] beside them, so that the number stands first and the film can wait`,
      })),
    ...calls
      .filter((whom) => !named.includes(whom))
      .map((whom) => ({
        path: [...path, 'calls'],
        message: `say: beside it does not name the number of ${whom}; write ${NUMBERS[whom]} there, or take ${whom} out here`,
      })),
  ];
};

export const Rule = Fields.superRefine((rule, context) => {
  const { kind, level, open, when, hazards, heard, checks } = rule;
  for (const fault of [
    ...calledFaults(rule, []),
    ...rule['at-once'].flatMap((one, at) => calledFaults(one, ['at-once', at])),
  ])
    context.addIssue({ code: 'custom', ...fault });
  if (!when && !hazards.length && !heard.length)
    context.addIssue({
      code: 'custom',
      path: ['when'],
      message: 'what calls for the rule; hazards: or heard: may say it instead',
    });
  if ((kind === 'stop') !== (level === 'stop'))
    context.addIssue({
      code: 'custom',
      path: ['level'],
      message:
        kind === 'stop'
          ? 'write stop: what is a stop on a page (kind: stop) is one in a reply as well'
          : 'write care or note, or kind: stop above it: what is no stop on a page is none in a reply',
    });
  if (checks.length && (kind !== 'stop' || !when))
    context.addIssue({
      code: 'custom',
      path: ['checks'],
      message: 'only a stop that stands by its facts (when:) is known where a check is asked',
    });
  if (kind === 'stop' && !open)
    context.addIssue({
      code: 'custom',
      path: ['open'],
      message: 'when the stop is settled, so that what lies behind it may be done',
    });
  if (kind !== 'stop' && open)
    context.addIssue({
      code: 'custom',
      path: ['open'],
      message: 'nothing: steps wait for a stop alone. Is this one (kind: stop)?',
    });
});
export type Rule = z.infer<typeof Rule>;
