import type { ReplyWords } from '../../model/reply-words.ts';
import { reached } from '../../model/stage.ts';
import { filled } from '../../plain/filled.ts';
import { ended, firstSentence } from '../../plain/text.ts';
import type { Considered } from '../belief/consider.ts';
import { isCall } from '../belief/is-call.ts';
import type { ToldRule } from '../belief/mind.ts';

/** What a reply says of rules. */
export type SafetySaid = {
  /** The most pressing rule. */
  readonly rule: ToldRule | undefined;
  /** Someone has to be called: the film can wait, and no flaw is told beside it. */
  readonly calls: boolean;
  /** Before all else: what saves first. */
  readonly urgent: readonly string[];
  /** Where nothing is that pressing, the rule and its first sentence. */
  readonly first: string;
  /** The same in one line, to leave room for an answer. */
  readonly line: string;
  /** The next ones, a whole sentence each. */
  readonly besides: readonly string[];
  /** What guards a step that is over, said after what to do. */
  readonly later: readonly string[];
  /** All of it, for the long reply. */
  readonly all: readonly string[];
  readonly allLater: readonly string[];
};

/** Rules and cases that a short reply tells of. */
const TOLD = 2;

/** A rule in one sentence, where another stands before it. */
const lineOf = ({ atOnce, lead, say }: ToldRule): string => firstSentence(atOnce?.[0] ?? lead ?? say);

/** A title that asks says nothing before its answer. */
const headOf = (rule: ToldRule): string => {
  const says = rule.isStop ? firstSentence(rule.say) : lineOf(rule);
  return rule.title.endsWith('?') ? lineOf(rule) : `${ended(rule.title)} ${says}`;
};

const wholeOf = ({ title, atOnce = [], say }: ToldRule): string => [ended(title), ...atOnce, say].join(' ');

type Warned = Pick<Considered, 'warnings' | 'stage'>;

/** A rule of a step that is over guards nothing now. */
const isOver = (rule: ToldRule, stage: Warned['stage']): boolean =>
  rule.isPast === true ||
  rule.toldLast === true ||
  (rule.ofStep === true && stage !== undefined && reached(stage, 'dry-to-touch'));

/** The most pressing rule, and whether someone has to be called for it. */
export const pressing = ({ warnings, stage }: Warned): Pick<SafetySaid, 'rule' | 'calls'> => {
  const rule = warnings.find((one) => !isOver(one, stage));
  return { rule, calls: rule !== undefined && isCall(rule) };
};

export const safetySaid = (considered: Warned, { rules }: Pick<ReplyWords['says'], 'rules'>): SafetySaid => {
  const { warnings, stage } = considered;
  const { rule, calls } = pressing(considered);
  const others = warnings.filter((one) => one !== rule && !isOver(one, stage));
  const over = warnings.filter((one) => isOver(one, stage));
  const urgent = rule?.atOnce ?? [];
  // What belongs to the same harm is said by the call for help already.
  const beside = others.filter(({ atOnce }) => !(calls && atOnce));
  const first = (says: string): string => filled(rules.first, { says });
  const whole = rule && `${ended(rule.title)} ${rule.say}`;
  return {
    rule,
    calls,
    urgent: urgent.slice(0, calls ? TOLD : 1),
    first: rule && !urgent.length ? first(headOf(rule)) : '',
    line: rule && !urgent.length ? first(lineOf(rule)) : '',
    besides: beside.slice(0, TOLD).map(lineOf),
    later: over.map(lineOf),
    all: [
      ...urgent,
      ...(whole ? [urgent.length ? whole : first(whole)] : []),
      ...others.map((one) => filled(rules.also, { says: wholeOf(one) })),
    ],
    allLater: over.map(wholeOf),
  };
};
