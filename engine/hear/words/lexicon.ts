import type { Knowledge } from '../../knowledge/knowledge.ts';
import type { HearContent, HearLanguage } from '../../model/hear.ts';
import type { ReplyWords } from '../../model/reply-words.ts';
import type { SearchWords } from '../../model/search-words.ts';
import type { WordKind } from '../../model/word-kinds.ts';
import type { WordingKind } from '../../model/wordings.ts';
import { keysOf } from '../../plain/entry-of.ts';
import { type Sense, sensesOf } from './senses.ts';
import { patternOfWordings } from './wordings.ts';

/** What the ear knows, made at build time: plain data. */
export type Lexicon = {
  readonly senses: readonly Sense[];
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
  /** What a reply says, and what it listens for. */
  readonly reply: ReplyWords;
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

/** The lexicon of the content. */
export const buildLexicon = (known: Knowledge, content: HearContent, words: SearchWords): Lexicon => {
  const { language, questions, flaws, kinds, reply } = content;
  return {
    senses: sensesOf(known, content),
    spellings: words.spellings,
    oneSlip: language['one-slip'].join(','),
    ofWork: Object.keys(questions)
      .filter((question) => questions[question]?.of === 'work')
      .join(','),
    stillDrying: language['still-drying'],
    reply,
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
