import type { Knowledge } from '../../knowledge/knowledge.ts';
import { entryOf } from '../../plain/entry-of.ts';
import { type Heard, SURE } from '../words/heard.ts';
import type { Considered } from './consider.ts';
import type { NamedFlaw } from './named-flaws.ts';

/** What can not wait for any question, and of what a story must tell for it. */
type AtOnce = { readonly says: string; readonly of: 'spill' | 'coat' };

/** What is done this minute where such a flaw is named, before anything is asked: by the ids of the flaws. */
export type AtOnceLines = Readonly<Record<string, AtOnce>>;

export const atOnceOf = ({ defects }: Pick<Knowledge, 'defects'>): AtOnceLines =>
  Object.fromEntries(
    defects.flatMap(({ id, 'at-once': says, 'at-once-for': of = 'spill' }) =>
      says ? [[id, { says, of }]] : [],
    ),
  );

/** From here on what is said of one flaw may calm her, or send her at once. */
export const LIKELY = 0.5;

/** Words of something that happens now: a ring from last year needs no cloth this minute. */
const JUST_NOW =
  /\bjust\b|\b(?:right|even|only) now\b|\bon (?:it|there|the \w+) now\b|\bthis (?:minute|moment|second)\b|\b(?:seconds?|minutes?|moment) ago\b|\bspil(?:l|t)|\bknocked over\b|\bpuddle/i;
/** After so many hours no oil flows any more. */
const FLOWS = 12;

/** Whether a story tells of what the line is for: a fresh spill, or a coat that may still be fresh. */
const isNow = ({ of }: AtOnce, { text, facts }: Pick<Heard, 'text' | 'facts'>): boolean => {
  if (of === 'spill') return JUST_NOW.test(text);
  const laid = facts.find(({ fact, sure }) => fact === 'hours-since-coat' && sure >= SURE);
  return laid === undefined || Number(laid.value) < FLOWS;
};

/** What is done before the first question of all: a spill that stands there does not wait for it. */
export const thisMinute = (
  atOnce: AtOnceLines,
  { likely: [first], stage, warnings }: Pick<Considered, 'likely' | 'stage' | 'warnings'>,
  named: readonly Pick<NamedFlaw, 'defect'>[],
  heard: Pick<Heard, 'text' | 'facts'>,
): string | undefined =>
  // Harm that is under way comes before any film: hot rags before the oil that is still open.
  stage === 'wet' || stage === 'setting' || warnings.some((rule) => rule.atOnce?.length)
    ? undefined
    : [...named.map(({ defect }) => defect), first && first.chance >= LIKELY ? first.defect : '']
        .flatMap((defect) => entryOf(atOnce, defect) ?? [])
        .find((line) => isNow(line, heard))?.says;
