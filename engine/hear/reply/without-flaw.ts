import type { ReplyWords } from '../../model/reply-words.ts';
import { filled } from '../../plain/filled.ts';
import { isSeen } from '../asked/asks-for.ts';
import type { Considered } from '../belief/consider.ts';
import type { Heard } from '../words/heard.ts';
import type { Span } from '../words/words.ts';
import { nameSaid } from './name-said.ts';
import { handsOff } from './orders.ts';
import type { ReplyOptions } from './reply-options.ts';
import { pressing, safetySaid } from './reply-safety.ts';
import { isContent, isThanks } from './thanks.ts';

/** So likely must a flaw be to stand beside a danger where nothing that is seen was told. */
const BESIDE_DANGER = 0.6;
/** So likely must it be to be named at all then. */
export const NAMED = 0.3;

/** What is asked besides: its answer, and the words before the address that goes on from there. */
type Also = { readonly answer: string; readonly last: string };

/** A reply that tells of no flaw. */
export type WithoutFlaw = {
  readonly says: readonly string[];
  /** The words before an address, and that. */
  readonly last: string;
  readonly answer?: string;
  /** What a short one says of a stop where an answer stands right behind it. */
  readonly stop?: string;
  readonly also?: Also;
};

/**
 * What is said first of what was asked; nothing where harm is under way, and beside a stop nothing that says how to sand.
 */
export const answerTo = (
  considered: Pick<Considered, 'warnings' | 'stage'>,
  heard: Heard | undefined,
): string | undefined => {
  const { rule, calls } = pressing(considered);
  if (!heard?.asksFor || calls || rule?.atOnce || (rule?.isStop && heard.asksFor.sands)) return undefined;
  return heard.asksFor.answer;
};

/** What is asked besides, and where that is answered. */
const alsoOf = ({ alsoAsks }: Heard, pageAt: ReplyOptions['pageAt']): { readonly also?: Also } => {
  const at = alsoAsks && pageAt?.(alsoAsks.page);
  return at ? { also: { answer: alsoAsks.answer, last: `${alsoAsks.lead} ${at}` } } : {};
};

/** The words that facts rest on. */
const restsOf = ({ facts, among }: Heard): readonly Span[] =>
  [...facts, ...among].flatMap(({ rests }) => rests);

const hasSeen = (heard: Heard | undefined): boolean =>
  heard === undefined || heard.signs.some((sign) => isSeen(sign, restsOf(heard), heard.named));

/** Nobody asks, and nothing is wrong. */
const ofThanks = (heard: Heard, tellAt: string, words: ReplyWords): WithoutFlaw => {
  const { nothing, lead } = words.says;
  return {
    says: [...(isThanks(heard, words) ? [nothing.welcome] : []), nothing.wrong],
    last: `${lead['tell-again']} ${tellAt}`,
  };
};

/** The words tell too little, or are not understood. */
const ofTooLittle = (heard: Heard | undefined, tellAt: string, { says }: ReplyWords): WithoutFlaw => {
  const { nothing, lead } = says;
  return {
    says: [
      heard?.otherTongue ? nothing['other-tongue'] : nothing.unknown,
      nothing.leave,
      nothing['tell-more'],
    ],
    last: `${lead.tell} ${tellAt}`,
  };
};

/** A flaw is asked about that is not there. */
const ofFear = (
  considered: Considered,
  { heard, linkTo, words }: Pick<ReplyOptions, 'heard' | 'linkTo' | 'words'>,
): WithoutFlaw | undefined => {
  const [feared] = considered.likely;
  if (!feared || !heard?.feared?.includes(feared.defect) || heard.otherTongue) return undefined;
  const { nothing, lead } = words.says;
  const flaw = nameSaid(words).inSentence(feared.name.replace(/:.*/, ''));
  return {
    says: [...handsOff(considered, words.says), filled(nothing.feared, { flaw })],
    last: `${lead.feared} ${linkTo(feared.defect)}`,
  };
};

/** A reply that tells of no flaw: of a danger alone, of a coat that is yet to be chosen, or that the words say too little. */
export const withoutFlaw = (considered: Considered, options: ReplyOptions): WithoutFlaw | undefined => {
  const { ruleAt, whichAt, page, pageAt, tellAt, heard, words } = options;
  const { lead } = words.says;
  const { rule, calls, line } = safetySaid(considered, words.says);
  if (heard && tellAt && !rule && isContent(heard, words)) return ofThanks(heard, tellAt, words);
  const chance = considered.likely[0]?.chance ?? 0;
  const seen = hasSeen(heard);
  const more = rule && ruleAt ? `${lead.rule} ${ruleAt(rule.id)}` : '';
  const answer = answerTo(considered, heard);
  // A stop goes before any answer, and leads to its own page.
  if (heard?.asksFor && rule?.isStop && more && !calls)
    return answer
      ? { says: [answer], last: more, stop: line, ...alsoOf(heard, pageAt) }
      : { says: [], last: more };
  if (heard?.asksFor && page && answer)
    return { says: [], last: `${heard.asksFor.lead} ${page.at}`, answer, ...alsoOf(heard, pageAt) };
  const hands = handsOff(considered, words.says);
  if (rule && (calls || page?.at === ruleAt?.(rule.id) || (!seen && chance < BESIDE_DANGER)) && more)
    // "Look after the child" takes nothing back from hands off a coat that still moves.
    return { says: calls ? [] : hands, last: more };
  if (whichAt) return { says: [], last: `${lead.which} ${whichAt}` };
  if (page && rule?.isStop && more) return { says: hands, last: more };
  if (page) {
    // A rule that is told already is led to, and not said again.
    const isToldOf = considered.warnings.some(({ id }) => ruleAt && page.at === ruleAt(id));
    return {
      says: [...hands, ...(page.says && !isToldOf ? [page.says] : [])],
      last: `${filled(lead.page, { title: page.title })} ${page.at}`,
    };
  }
  const feared = ofFear(considered, options);
  if (feared) return feared;
  return tellAt && (heard?.otherTongue || (!seen && chance < NAMED))
    ? ofTooLittle(heard, tellAt, words)
    : undefined;
};
