/** What is told of hands, hazards and cautions: what is wrong, and how the author mends it. */

import { HAZARDS } from '../model/hazard.ts';
import { either } from './either.ts';
import type { Weight } from './issue.ts';
import { within } from './mend.ts';
import type { Of, Say, Told } from './told.ts';

/** How a rule of each weight is written, and what it is called. */
const RULE: Readonly<Record<Weight, readonly [called: string, written: string]>> = {
  stop: ['warning that stops people', 'kind: stop'],
  care: ['caution', 'kind: caution, level: care'],
  note: ['note', 'kind: caution, level: note'],
  limit: ['limit', 'kind: adjustment'],
};

/** A rule to widen, or to name; else one to begin with. */
const ruleWanted = ({ of, hazard, lacks, in: on, rule, like }: Of<'no-caution'>): string => {
  const marks = `${RULE[lacks][1]} and hazards: [${hazard}]`;
  if (rule && of === 'lesson') return `add ${rule.id} under "rules:"`;
  if (rule)
    return `content/rules/${rule.id}.mdx warns of it, but only with ${rule.only}; change that, so that it holds ${on === 'any case' ? 'here' : 'in this case'} too`;
  const made = like
    ? `copy content/rules/${like}.mdx under a new name, with ${marks}, and put your own words in`
    : `make a file in content/rules with ${marks}`;
  return of === 'lesson' ? `${made}; then add its name under "rules:"` : made;
};

const noCaution = (issue: Of<'no-caution'>): Told => {
  const where = issue.in === 'any case' ? '' : `, in this case: ${issue.in}`;
  return [
    `no ${RULE[issue.lacks][0]} stands before the ${issue.of} "${issue.step}", which ${HAZARDS[issue.hazard]}${where}`,
    ruleWanted(issue),
  ];
};

const hazardUntold = ({ of, step, word, hazards, isOneLine }: Of<'hazard-untold'>): Told => {
  const mark = within(`does: [${hazards.join(', ')}]`, isOneLine);
  const does = hazards.map((one) => HAZARDS[one]).join(' and ');
  if (of === 'if-not')
    return [
      `"${step}" says "${word}", which ${does}, and no caution stands before these words`,
      'put that under "steps:" as a step of its own, or name a repair that has such a step: if-not: { say: …, remedy: name-of-the-repair }',
    ];
  if (of === 'laid')
    return [
      `the ${word} of "${step}" is rubbed in with paper in the next step, so the warning of old layers must come before it`,
      mark,
    ];
  return [
    `"${step}" says "${word}", but the line is not marked as one that ${does}, and no caution would stand before it`,
    mark,
  ];
};

const comesOffUntold = ({ step, isMix, word, isOneLine }: Of<'comes-off-untold'>): Told => [
  `the step "${step}" ${isMix ? 'handles finish that may still be soft, in the can or on the piece' : 'takes off finish that may still be soft'} ("${word}"), and a cloth or paper full of it can heat up and catch fire by itself`,
  `say which finish that is, so that the caution stands before it: ${within('of: same', isOneLine)} (same: the top coat of this repair; of: oil for any drying oil; of: base-color for the paint or stain below)`,
];

const BECOMES = {
  steps: 'say what the film does by itself and when to look again; what hands do then goes under "steps:"',
  remedy:
    'say here only what the film does by itself and when to look again; what hands do belongs in a remedy, under "steps:"',
  leave:
    'take the words out, or write remedy: and the name of a repair that says it, in place of leave: and its words',
} as const;

/** "Do not pull it off slowly" would have it pulled off fast. */
const withoutHow = (order: string): string =>
  order.replace(/^./, (first) => first.toLowerCase()).replace(/,? (?:very )?[a-z]+ly\b/g, '');

const touchOrdered = ({ order, where, becomes }: Of<'touch-ordered'>): Told =>
  becomes === 'not'
    ? [
        `after "not:" stands an order to touch the film, "${order}", ${where}`,
        `write there what must not be done at all, beginning with Do not: Do not ${withoutHow(order)}`,
      ]
    : [`"${order}" sends a hand to the film ${where}`, BECOMES[becomes]];

/** Who says nothing of when to look again has the usual words, which stand nowhere in the file. */
const timesDiffer = ({ again, isOwn, days, isOneLine }: Of<'times-differ'>): Told => {
  const usual = `when to look again, so readers get the usual words, "${again}"`;
  if (days === undefined)
    return isOwn
      ? [
          `the film is as dry already as the words after "again:" wait for, "${again}"`,
          'write there another time, for example again: Look again in a week.',
        ]
      : [
          `this stage does not say ${usual}, and the film is as dry as that already`,
          `add your own: ${within('again: Look again in a week.', isOneLine)}, with the right time`,
        ];
  return isOwn
    ? [
        `this stage says "${days}" after "say:", and after "again:" another time, "${again}"`,
        `write the same time in both, for example again: Look again after ${days}.`,
      ]
    : [
        `this stage says "${days}" and not ${usual}`,
        `add your own: ${within(`again: Look again after ${days}.`, isOneLine)}`,
      ];
};

/** What an act may be, for whoever has never chosen one. */
const MEANS: Readonly<Record<string, string>> = {
  leave: 'hands off',
  stop: 'end all work',
  wait: 'leave it to dry',
  accept: 'it is good as it is',
};
const asDoing = (one: string): string => `do: ${one}${one in MEANS ? ` (${MEANS[one]})` : ''}`;

export const OF_SAFETY: Say<
  | 'touches-setting'
  | 'touch-ordered'
  | 'times-differ'
  | 'step-order'
  | 'against-told'
  | 'no-caution'
  | 'comes-off-untold'
  | 'look-lays'
  | 'hazard-untold'
  | 'check-cuts'
  | 'check-touches'
  | 'over-limit'
> = {
  'touches-setting': (issue) => [
    `"do: ${issue.doing}" is more than a film at the stage "${issue.stage}" bears`,
    `write ${either(issue.allowed.map(asDoing))}, and change the sentence after "say:" to match`,
  ],
  'touch-ordered': touchOrdered,
  'times-differ': timesDiffer,
  'step-order': (issue) => [`the step "${issue.step}" ${issue.what}`, issue.mend],
  'against-told': (issue) => [
    `the step "${issue.step}" ${issue.why}, but it is shown as well to those with ${issue.fact}: ${either(issue.told)}`,
    issue.mend,
  ],
  'no-caution': noCaution,
  'comes-off-untold': comesOffUntold,
  'look-lays': (issue) => [
    `the step "${issue.step}" says "${issue.word}", but has ${issue.field}, which lays nothing and opens no can`,
    'give that a step of its own, with kind: coat, mix or test-patch',
  ],
  'hazard-untold': hazardUntold,
  'check-cuts': (issue) => [
    `the check "${issue.text}" says "${issue.word}", and no warning of old paint, which may hold lead, is shown before a question`,
    'say how it is seen without that, or add a sentence to it such as: Over layers of unknown age, do not sand or scrape, and answer that you cannot tell.',
  ],
  'check-touches': (issue) => [
    `the check "${issue.text}" says "${issue.word}", but it may be asked while the film is wet`,
    'say how it is seen without a touch, or write after "safe-from:" the first stage at which touching does no harm, for example safe-from: dry-to-touch',
  ],
  'over-limit': (issue) => [
    `this step takes ${issue.what} to ${issue.percent} %, and the rule "${issue.rule}" allows ${issue.most} % at most`,
    `write ${issue.most} or less`,
  ],
};
