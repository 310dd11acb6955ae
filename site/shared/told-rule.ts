import type { RuleEntry } from '#engine/index.ts';
import { ended, firstSentence, lower } from '#engine/plain/text.ts';

/** Most rules give way to these; the foot of every page says so, once. */
const LABEL_WINS =
  'The label and the safety data sheet win; your fire department, local rules, insurer and landlord may ask for more.';

/** Whose word wins beside those. */
export const ownWord = ({ defers }: Pick<ToldRule, 'defers'>): string =>
  defers.replace(LABEL_WINS, '').trim();

/** On steps that lie behind a stop; what follows it says when, or for whom. */
export const OPEN_THE_STEPS = 'Show the steps';

/** When, or for whom, the steps behind these stops are. */
export const openOnly = (stops: readonly Pick<RuleEntry, 'open'>[]): string =>
  stops.flatMap(({ open }) => (open ? [`only ${lower(open)}`] : [])).join(', and ');

/** Leads from a caution to the page of its rule. */
export const MORE_OF_A_RULE = 'Why, and where from';

/** What a page shows of a rule. */
export type ToldRule = Pick<RuleEntry, 'kind' | 'level' | 'title' | 'lead' | 'say' | 'why' | 'defers'> & {
  readonly id: string;
};

/** What of a rule stands in words on a page; `lead` is the one line that stands for all of it where it is folded. */
export const toldWords = (rule: ToldRule) => ({
  title: rule.title,
  titled: ended(rule.title),
  lead: rule.lead ?? firstSentence(rule.say),
  say: rule.say,
  why: rule.why,
  defers: ownWord(rule),
});
export type RuleWords = Readonly<ReturnType<typeof toldWords>>;
