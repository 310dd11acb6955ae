import type { NamedFlaw } from '#engine/hear/belief/named-flaws.ts';
import { dangerName, flawName, type Heard as HeardText, type Mind } from '#engine/hear.ts';
import { isKeyOf } from '#engine/plain/entry-of.ts';
import { choices } from '../../shared/choices.ts';
import { TOLD } from '../../shared/told.ts';
import { factWords, isTaken } from './words.ts';

type Strip = { readonly name: string; readonly says: string; readonly rests: string };

type Props = {
  readonly heard: HeardText;
  readonly named: readonly NamedFlaw[];
  readonly told: Readonly<Record<string, string>>;
  readonly mind: Mind;
  readonly takeOff: (name: string) => void;
};

/** Kinds that lie in or on the wood without being a film. */
const NO_CLEAR_COAT = ['wax', 'oil', 'hardwax-oil'];
/** More answers than that are no help to read. */
const FEW = 3;

/** A fact in words. The age of what lies below is an answer that tells nothing without its question. */
const wordsOf = (
  fact: string,
  value: string | number,
  range?: readonly [number, number],
): string | undefined => {
  const says = factWords({ ...choices, ...TOLD }, fact, value, range);
  return says && fact === 'age' ? `${TOLD.age.ask} ${says}` : says;
};

/** What is left open, in words: a list of six kinds is told as what they have in common. */
const amongWords = (fact: string, values: readonly string[]): string => {
  const clear = !values.some((value) => NO_CLEAR_COAT.includes(value));
  if (fact === 'family' && values.length >= FEW)
    return clear ? 'A clear coat, kind not said' : 'A top coat, kind not said';
  return values.flatMap((value) => wordsOf(fact, value) ?? []).join(' or ');
};

const SAID = { yes: 'Yes', no: 'No', unsure: 'Can’t tell' } as const;

const askOf = (mind: Mind, question: string): string | undefined =>
  mind.questions[mind.matrix.questions.indexOf(question)]?.ask;

/** What was understood, a strip each; a tap takes off what is not so. What she told by a tap wins over what was heard. */
export const Heard = ({ heard, named, told, mind, takeOff }: Props) => {
  // Words that stand within others that are quoted are said already.
  const quoted = (spans: readonly { readonly from: number; readonly to: number }[]) =>
    [
      ...new Set(
        spans
          .filter(
            (one) =>
              !spans.some(
                ({ from, to }) => from <= one.from && one.to <= to && to - from > one.to - one.from,
              ),
          )
          .map(({ from, to }) => `“${heard.text.slice(from, to)}”`),
      ),
    ].join(', ');
  const tapped = Object.entries(told).flatMap(([name, value]): Strip[] => {
    const ask = askOf(mind, name);
    const says = ask && isKeyOf(SAID, value) ? `${ask} ${SAID[value]}` : wordsOf(name, value);
    return says ? [{ name, says, rests: '' }] : [];
  });
  // A film that is sticky long past its time has one standing, as she tells it by a tap: that, or how dry it is.
  const isOverdue = heard.facts.some((fact) => fact.fact === 'overdue' && isTaken(fact));
  const isTold = (fact: string) =>
    Object.hasOwn(told, fact) ||
    (fact === 'overdue' ? Object.hasOwn(told, 'stage') : isOverdue && fact === 'stage');
  const facts = heard.facts
    .filter((fact) => isTaken(fact) && !isTold(fact.fact))
    .flatMap(({ fact, value, range, rests }): Strip[] => {
      const says = wordsOf(fact, value, range);
      return says ? [{ name: fact, says, rests: quoted(rests) }] : [];
    });
  const among = heard.among
    .filter(({ fact }) => !Object.hasOwn(told, fact))
    .map(
      ({ fact, values, rests }): Strip => ({
        name: fact,
        says: amongWords(fact, values),
        rests: quoted(rests),
      }),
    );
  const dangers = heard.dangers.flatMap(({ rule, rests }): Strip[] => {
    const title = mind.dangers.find(({ id }) => id === rule)?.title;
    // Her own words: what they call for stands above in full.
    return title ? [{ name: dangerName(rule), says: quoted(rests) || title, rests: '' }] : [];
  });
  const flaws = named.map(
    ({ defect, name, span }): Strip => ({ name: flawName(defect), says: name, rests: quoted([span]) }),
  );
  const strips = [...flaws, ...tapped, ...facts, ...among, ...dangers];
  if (!strips.length) return null;
  return (
    <section class="heard">
      <h2>What I understood</h2>
      <ul>
        {strips.map(({ name, says, rests }) => (
          <li key={name}>
            <button type="button" class="tape" onClick={() => takeOff(name)}>
              <b>{says}</b> {rests && <span>{rests}</span>} <i>not so</i>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
};
