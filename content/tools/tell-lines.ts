import { type Considered, type Heard, isCall, type NextAsked, type Reply, type Span } from '#engine/hear.ts';
import type { Knowledge } from '#engine/index.ts';
import type { Whom } from '#engine/model/whom.ts';

const quoted = (text: string, spans: readonly Span[]): string =>
  spans.map(({ from, to }) => `"${text.slice(from, to).replaceAll(/\s+/g, ' ')}"`).join(', ');

const percent = (share: number): string => `${Math.round(100 * share)} %`;

/** What was heard, a line each: what, how sure, the words that it rests on and those against it. */
export const tellLines = (
  known: Knowledge,
  { text, facts, among, signs }: Heard,
  considered: Considered,
  { short }: Reply,
): string[] => {
  const line = (what: string, sure: number, rests: readonly Span[], against: readonly Span[]): string =>
    `  ${what} (${percent(sure)}${rests.length ? `: ${quoted(text, rests)}` : ''}` +
    `${against.length ? `; against it ${quoted(text, against)}` : ''})`;
  return [
    'Heard of the piece:',
    ...facts.map(({ fact, value, range, sure, rests, against }) =>
      line(
        `${fact} ${value}${range && range[0] !== range[1] ? ` (${range[0]} to ${range[1]})` : ''}`,
        sure,
        rests,
        against,
      ),
    ),
    ...among.map(({ fact, values, sure, rests, against }) =>
      line(`${fact} one of ${values.join(', ')}`, sure, rests, against),
    ),
    ...(facts.length + among.length ? [] : ['  nothing']),
    'Heard of the flaw:',
    ...signs.map(({ question, answer, sure, rests, against }) =>
      line(`${known.get('question', question).ask} ${answer}`, sure, rests, against),
    ),
    ...(signs.length ? [] : ['  nothing']),
    ...standing(considered),
    'A reply:',
    `  ${short}`,
  ];
};

/** The flaws that are listed at most. */
const LISTED = 5;

const nextWords = (next: NextAsked): string =>
  ({
    stage: () => 'How dry is it?',
    age: () => 'How old is the paint or varnish below?',
    question: () => (next.kind === 'question' ? `${next.ask} ${next.how}` : ''),
  })[next.kind]();

/** Whom to call, by all that is told. */
const callsOf = (warnings: Considered['warnings']): readonly Whom[] => [
  ...new Set(warnings.flatMap(({ calls = [] }) => calls)),
];

const standing = ({ likely, warnings, now, next }: Considered): string[] => [
  'Likely:',
  ...likely.slice(0, LISTED).map(({ name, defect, chance }) => `  ${percent(chance)} ${name} (${defect})`),
  ...(warnings.some(isCall) ? [`Call first: ${callsOf(warnings).join(', ')}. The film can wait.`] : []),
  ...warnings.map(({ title, say, isStop }) => `${isStop ? 'Stop' : 'Caution'}: ${title}. ${say}`),
  ...(now ? [`Now${now.sure ? '' : ', not sure'}: ${now.verdict}. ${now.say}`] : []),
  ...(next ? [`Next: ${nextWords(next)}`] : []),
];

/** The same as data. Spans count UTF-16 units of the text. */
export const tellJson = (
  { text, facts, among, signs, dangers }: Heard,
  { likely, stage, warnings, now, next }: Considered,
  answer: Reply,
) => ({
  text,
  facts,
  among,
  signs,
  likely: likely.slice(0, LISTED),
  stage,
  dangers,
  calls: callsOf(warnings),
  stops: warnings.filter(({ isStop }) => isStop).map(({ id }) => id),
  cautions: warnings.filter(({ isStop }) => !isStop).map(({ id }) => id),
  now,
  next,
  reply: answer,
});
