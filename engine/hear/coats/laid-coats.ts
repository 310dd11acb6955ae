import type { Manner } from '../words/manner.ts';
import type { Ear } from '../words/match.ts';
import { isOfOthers } from '../words/of-others.ts';
import { oneOf } from '../words/one-of.ts';
import { stretch } from '../words/stretch.ts';
import type { Word } from '../words/words.ts';
import { type Count, MOST_COATS, partOf } from './coat-counts.ts';

/** A text as its coats are counted. */
export type Coats = {
  readonly ear: Ear;
  readonly words: readonly Word[];
  readonly manner: Manner;
  /** The kind of finish that is taken as told. */
  readonly family: string | undefined;
  /** Words that stand for a coat. */
  readonly named: ReadonlySet<number>;
  readonly first: number;
  /** Whether no more than one is named as laid. */
  readonly isOne: boolean;
};

/** A count that the words `from` to before `to` may tell. */
export type Said = { readonly count: Count | undefined; readonly from: number; readonly to: number };

/** Coats that are wanted and not laid. */
const WANTED = /^(wanted|planned|left|needed|recommended|more|quoted)$/;
const WANTING =
  /^(need|needs|needed|lack|lacks|want|wants|wanted|quoted|recommends?|says?|plan|planned|require|requires|meaning|intending|intend|aim|aiming|cover|covers)$/;
/** What is done as a rule, or asked to be enough. */
const USUALLY = /^(always|usually|normally|typically|generally|enough)$/;
const isPlanned = (words: readonly Word[], from: number, to: number): boolean =>
  words.slice(from, to).some((word) => word.clause === words[from]?.clause && WANTED.test(word.word));

const LABEL = oneOf('can|label|tin|directions|instructions');
const SAYS = oneOf('says|say|said|calls|call|recommends|recommend|wants|want|asks|ask|requires|require');

/** "the can says light sweeping coats, three coats": what the label asks for is not laid yet. */
const isOfLabel = (words: readonly Word[], at: number): boolean => {
  const { clause } = words[at] ?? {};
  for (let back = at - 1; back > 0 && words[back]?.clause === clause; back--)
    if (SAYS.test(words[back]?.word ?? '') && LABEL.test(words[back - 1]?.word ?? '')) return true;
  return false;
};

/** What takes coats off, or leaves them out. */
const UNDONE = oneOf('removed|removing|stripped|skipped|forgot');
/** So far back whoever laid them is named. */
const OWNER = 7;
const WILL = oneOf('will|would|should|could|shall');

/** Words before a count, and on both sides of it, that tell whether it was laid. */
export const BEFORE = 4;
const AROUND = 15;

/** Whether so many were laid: not planned, wanted, of the label, of another piece, or what is done as a rule. */
const isLaid = ({ words, manner }: Coats, { from, to }: Said): boolean => {
  if (manner.notYet(stretch(from, to)) || isPlanned(words, to, to + 2)) return false;
  if (isOfOthers(words, from, to) || isOfLabel(words, from)) return false;
  const before = partOf(words, from, from - BEFORE, from);
  // "will the third coat take care of it"
  if (words[from]?.asks && before.some(({ word }) => WILL.test(word))) return false;
  if (before.slice(-3).some(({ word }) => word === 'before' || UNDONE.test(word))) return false;
  // "the previous owner put on ten coats"
  if (partOf(words, from, from - OWNER, from).some(({ word }) => /^owners?$/.test(word))) return false;
  if (before.some(({ word }) => WANTING.test(word))) return false;
  return !partOf(words, from, from - AROUND, from + AROUND).some(({ word }) => USUALLY.test(word));
};

const isCount = ({ low, high }: Count): boolean => low >= 1 && high <= MOST_COATS && Number.isInteger(high);

/** The counts that were laid. */
export const laidOf = (coats: Coats, said: readonly Said[]): Count[] =>
  said.flatMap((one) => (one.count && isCount(one.count) && isLaid(coats, one) ? [one.count] : []));
