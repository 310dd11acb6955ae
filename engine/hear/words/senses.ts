import type { Knowledge } from '../../knowledge/knowledge.ts';
import { CHOICES_OF_THE_PIECE } from '../../model/facts.ts';
import type { HearContent, HearFacts, HearFlaws, HearLanguage, HearQuestions } from '../../model/hear.ts';
import { senseOfSign } from './sense.ts';
import { stemOf } from './words.ts';

/**
 * What phrases mean. A sense is `fact family water-based`, `among family poly…`, `sign still-tacky yes`,
 * `flaw peeling`, `danger oily-rags`, `urgent oily-rags 0` (its first case), `harm emergency 0` (what
 * `harms emergency 0` did, told in another sentence), `calm oily-rags 0` (what takes it back),
 * `no-danger hardener-isocyanate` (what only sounds like it) or `cue not-yet`; its phrases are joined by commas, their
 * words are stems.
 */
export type Sense = readonly [sense: string, phrases: string];

const CUES = [
  'not-denying',
  'not-yet',
  'feared',
  'is-over',
  'other-time',
  'other-layer',
  'owned',
  'unwiped',
  'asks-which',
  'not-which',
] as const;

const MEASURED = ['times', 'air-celsius', 'relative-humidity'] as const;

const stemmed = (phrase: string): string =>
  phrase
    .split(' ')
    .map((word) =>
      [...new Set(word.split('|').map((one) => (one.startsWith('=') ? one : stemOf(one))))].join('|'),
    )
    .join(' ');

const joined = (phrases: readonly string[]): string => [...new Set(phrases.map(stemmed))].join(',');

const plain = (name: string): string =>
  name
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, ' ')
    .trim();

const namesOfProducts = ({ products }: Knowledge, family: string): readonly string[] =>
  products
    .filter((one) => one.family === family)
    .flatMap(({ name, also }) => [plain(name), ...also.map(plain)]);

const valuesOf = (fact: string, values: Readonly<Record<string, readonly string[]>>): readonly Sense[] =>
  Object.entries(values).map(([value, say]) => [`fact ${fact} ${value}`, joined(say)]);

const ofFacts = (known: Knowledge, facts: HearFacts): readonly Sense[] => {
  const { among = [], ...families } = facts.family as Record<string, string[]> & {
    among?: { say: string; values: string[] }[];
  };
  const named = Object.entries(families).map(
    ([family, say]) => [family, [...say, ...namesOfProducts(known, family)]] as const,
  );
  return [
    ...valuesOf('family', Object.fromEntries(named)),
    ...[...CHOICES_OF_THE_PIECE, 'stage' as const, 'overdue' as const].flatMap((fact) =>
      valuesOf(fact, facts[fact] as Record<string, readonly string[]>),
    ),
    ...among.map(({ say, values }): Sense => [`among family ${values.join('|')}`, joined([say])]),
    ['none', joined(facts['no-fact'])],
  ];
};

const ofFlaws = ({ names }: HearFlaws): readonly Sense[] =>
  names.flatMap(({ is, say, alone }): readonly Sense[] => [
    [`flaw ${is.join('|')}`, joined(say)],
    [`flaw-alone ${is.join('|')}`, joined(alone)],
  ]);

const ofQuestions = (questions: HearQuestions): readonly Sense[] =>
  Object.entries(questions).flatMap(([question, { yes, no }]): readonly Sense[] => [
    [senseOfSign(question, 'yes'), joined(yes)],
    [senseOfSign(question, 'no'), joined(no)],
  ]);

const ofRules = ({ rules }: Knowledge): readonly Sense[] => [
  ...rules.map(
    ({ id, heard, 'at-once': cases }): Sense => [
      `danger ${id}`,
      joined([...heard, ...cases.flatMap((one) => (one.fires ? one.heard : []))]),
    ],
  ),
  ...rules.map((rule): Sense => [`no-danger ${rule.id}`, joined(rule['not-heard'])]),
  ...rules.flatMap(({ id, 'at-once': cases }) =>
    cases.flatMap(({ heard, across, unless }, at): readonly Sense[] => [
      [`urgent ${id} ${at}`, joined(heard)],
      [`harm ${id} ${at}`, joined(across?.heard ?? [])],
      [`harms ${id} ${at}`, joined(across?.names ?? [])],
      [`calm ${id} ${at}`, joined(unless)],
    ]),
  ),
];

const ofLanguage = (language: HearLanguage): readonly Sense[] => [
  ...CUES.map((cue): Sense => [`cue ${cue}`, joined(language[cue])]),
  ...language['asks-for'].flatMap(({ heard, unless }, at): readonly Sense[] => [
    [`cue asks-for ${at}`, joined(heard)],
    [`cue not-for ${at}`, joined(unless)],
  ]),
  ...Object.entries(language.alone).map(([stage, say]): Sense => [`alone ${stage}`, joined(say)]),
  ...MEASURED.flatMap((name) =>
    Object.entries(language[name]).map(
      ([say, value]): Sense => [`${name} ${[value].flat().join(' ')}`, joined([say])],
    ),
  ),
];

/** All senses that somebody has phrases for. Kinds of top coat are also heard by the names of the products. */
export const sensesOf = (
  known: Knowledge,
  { language, facts, questions, flaws }: HearContent,
): readonly Sense[] =>
  [
    ...ofFacts(known, facts),
    ['no-sign', joined(language['no-sign'])] as const,
    ['no-sign of-bodies', joined(language['of-bodies'])] as const,
    ['whole', joined(flaws.whole)] as const,
    ...ofFlaws(flaws),
    ...ofQuestions(questions),
    ...ofRules(known),
    ...ofLanguage(language),
  ].filter(([, phrases]) => phrases);
