import type { Knowledge } from '../knowledge/knowledge.ts';
import { CHOICES_OF_THE_PIECE } from '../model/facts.ts';
import type { HearFacts, HearFlaws, HearLanguage, HearQuestions, HearWordKinds } from '../model/hear.ts';
import type { SearchWords } from '../model/search-words.ts';
import type { WordKind } from '../model/word-kinds.ts';
import type { WordingKind } from '../model/wordings.ts';
import { keysOf } from '../plain/entry-of.ts';
import { senseOfSign } from './sense.ts';
import { patternOfWordings } from './wordings.ts';
import { stemOf } from './words.ts';

/** What the ear knows, as an author writes it. */
export type HearContent = {
  readonly language: HearLanguage;
  readonly facts: HearFacts;
  readonly questions: HearQuestions;
  readonly flaws: HearFlaws;
  readonly kinds: HearWordKinds;
};

/**
 * What the ear knows, made at build time: plain data. A sense is `fact family water-based`, `among family poly…`,
 * `sign still-tacky yes`, `flaw peeling`, `danger oily-rags`, `urgent oily-rags 0` (its first case), `harm emergency 0` (what `harms emergency 0` did, told in another sentence), `calm oily-rags 0` (what takes it back), `no-danger hardener-isocyanate` (what only sounds like it) or `cue not-yet`; its phrases are joined by commas, their words are stems.
 */
export type Lexicon = {
  readonly senses: readonly (readonly [sense: string, phrases: string])[];
  readonly spellings: Readonly<Record<string, string>>;
  /** Names of coats that are understood with one slip. */
  readonly oneSlip: string;
  /** The questions of work: what is only planned is no answer to them. */
  readonly ofWork: string;
  /** What is asked while nothing is wrong, in the order of its cues. */
  readonly asksFor: readonly AskedFor[];
  /** Wordings of each kind, as patterns. */
  readonly wordings: Readonly<Record<WordingKind, string>>;
  /** What stands around figures of the tables. */
  readonly tables: HearLanguage['tables'];
  readonly stillDrying: StillDrying;
  /** What may stand beside a name of a flaw that is one only alone. */
  readonly small: string;
  readonly turns: string;
  readonly not: string;
  readonly otherTongue: string;
  readonly below: string;
  readonly onTop: string;
  readonly laid: string;
  readonly ago: string;
  readonly was: string;
  /** The words of each kind. */
  readonly kinds: Readonly<Record<WordKind, string>>;
  /** What measures the air, each with a short form that is no longer than any slip of it. */
  readonly airUnits: Readonly<Record<string, string>>;
  readonly numbers: Readonly<Record<string, number>>;
  readonly units: Readonly<Record<string, number>>;
};

/** What a reply says of a coat that is soft within its time, and what stands before the page of its flaw. */
export type StillDrying = { readonly answer: string; readonly lead: string };

/** An answer of its own, and the page that goes on from there. */
export type AskedFor = {
  readonly answer: string;
  readonly lead: string;
  readonly page: string;
  /** Answered also where the time of a coat is told. */
  readonly thoughTold?: true;
  /** Questions whose answers may stand beside it, joined by commas. */
  readonly beside?: string;
  /** Said only where the words lead to no page. */
  readonly perhaps?: true;
  /** What its page takes along, by the names of its form. */
  readonly carries?: Readonly<Record<string, string>>;
  /** It says how to sand. */
  readonly sands?: true;
};

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

/** The lexicon of the content. Kinds of top coat are also heard by the names of the products. */
export const buildLexicon = (known: Knowledge, content: HearContent, words: SearchWords): Lexicon => {
  const { language, facts, questions, flaws, kinds } = content;
  const { among = [], ...families } = facts.family as Record<string, string[]> & {
    among?: { say: string; values: string[] }[];
  };
  const products = new Map<string, string[]>();
  for (const { family, name, also } of known.products)
    products.set(family, [...(products.get(family) ?? []), plain(name), ...also.map(plain)]);
  const told: [string, Record<string, readonly string[]>][] = [
    [
      'family',
      Object.fromEntries(
        Object.entries(families).map(([family, say]) => [family, [...say, ...(products.get(family) ?? [])]]),
      ),
    ],
    ...[...CHOICES_OF_THE_PIECE, 'stage' as const, 'overdue' as const].map(
      (fact): [string, Record<string, readonly string[]>] => [
        fact,
        facts[fact] as Record<string, readonly string[]>,
      ],
    ),
  ];
  const cues = [
    'not-denying',
    'not-yet',
    'feared',
    'is-over',
    'other-time',
    'other-layer',
    'owned',
    'asks-which',
    'not-which',
  ] as const;
  const measured = ['times', 'air-celsius', 'relative-humidity'] as const;
  return {
    senses: [
      ...told.flatMap(([fact, values]) =>
        Object.entries(values).map(([value, say]) => [`fact ${fact} ${value}`, joined(say)] as const),
      ),
      ...among.map(({ say, values }) => [`among family ${values.join('|')}`, joined([say])] as const),
      ['none', joined(facts['no-fact'])],
      ['no-sign', joined(language['no-sign'])],
      ['no-sign of-bodies', joined(language['of-bodies'])],
      ['whole', joined(flaws.whole)],
      ...flaws.names.flatMap(({ is, say, alone }) => [
        [`flaw ${is.join('|')}`, joined(say)] as const,
        [`flaw-alone ${is.join('|')}`, joined(alone)] as const,
      ]),
      ...Object.entries(questions).flatMap(([question, { yes, no }]) => [
        [senseOfSign(question, 'yes'), joined(yes)] as const,
        [senseOfSign(question, 'no'), joined(no)] as const,
      ]),
      ...known.rules.map(
        ({ id, heard, 'at-once': cases }) =>
          [
            `danger ${id}`,
            joined([...heard, ...cases.flatMap((one) => (one.fires ? one.heard : []))]),
          ] as const,
      ),
      ...known.rules.map((rule) => [`no-danger ${rule.id}`, joined(rule['not-heard'])] as const),
      ...known.rules.flatMap(({ id, 'at-once': cases }) =>
        cases.flatMap(({ heard, across, unless }, at) => [
          [`urgent ${id} ${at}`, joined(heard)] as const,
          [`harm ${id} ${at}`, joined(across?.heard ?? [])] as const,
          [`harms ${id} ${at}`, joined(across?.names ?? [])] as const,
          [`calm ${id} ${at}`, joined(unless)] as const,
        ]),
      ),
      ...cues.map((cue) => [`cue ${cue}`, joined(language[cue])] as const),
      ...language['asks-for'].flatMap(({ heard, unless }, at) => [
        [`cue asks-for ${at}`, joined(heard)] as const,
        [`cue not-for ${at}`, joined(unless)] as const,
      ]),
      ...Object.entries(language.alone).map(([stage, say]) => [`alone ${stage}`, joined(say)] as const),
      ...measured.flatMap((name) =>
        Object.entries(language[name]).map(
          ([say, value]) => [`${name} ${[value].flat().join(' ')}`, joined([say])] as const,
        ),
      ),
    ].filter(([, say]) => say) as [string, string][],
    spellings: words.spellings,
    oneSlip: language['one-slip'].join(','),
    ofWork: Object.keys(questions)
      .filter((question) => questions[question]?.of === 'work')
      .join(','),
    stillDrying: language['still-drying'],
    wordings: Object.fromEntries(
      keysOf(language.wordings).map((kind) => [kind, patternOfWordings(language.wordings[kind])]),
    ) as Lexicon['wordings'],
    tables: language.tables,
    asksFor: language['asks-for'].map(({ answer, lead, page, beside, sands, 'though-told': thoughTold }) => ({
      answer,
      lead,
      page,
      ...(thoughTold && { thoughTold }),
      ...(sands && { sands }),
      ...(beside?.length && { beside: beside.join(',') }),
    })),
    small: flaws.small.join(','),
    turns: language.turns.join(','),
    not: language.not.join(','),
    otherTongue: language['other-tongue'].join(','),
    below: language.below.join(','),
    onTop: language['on-top'].join(','),
    laid: language.laid.join(','),
    ago: language.ago.join(','),
    was: language.was.join(','),
    kinds: Object.fromEntries(keysOf(kinds).map((kind) => [kind, kinds[kind].join(',')])) as Lexicon['kinds'],
    airUnits: language['air-units'],
    numbers: language.numbers,
    units: language.units,
  };
};
