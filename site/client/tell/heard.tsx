import { isKeyOf } from '#engine/entry-of.ts';
import type { Heard as HeardText, Mind } from '#engine/hear.ts';
import type { NamedFlaw } from '#engine/named-flaws.ts';
import { choices } from '../../shared/choices.ts';
import { dangerName, flawName } from './state.ts';
import { factWords, isTaken } from './words.ts';

type Strip = { readonly name: string; readonly says: string; readonly rests: string };

type Props = {
  readonly heard: HeardText;
  readonly named: readonly NamedFlaw[];
  readonly told: Readonly<Record<string, string>>;
  readonly mind: Mind;
  readonly takeOff: (name: string) => void;
};

const SAID = { yes: 'Yes', no: 'No', unsure: 'Can’t tell' } as const;

const askOf = (mind: Mind, question: string): string | undefined =>
  mind.questions[mind.matrix.questions.indexOf(question)]?.ask;

/** What was understood, a strip each; a tap takes off what is not so. What she told by a tap wins over what was heard. */
export const Heard = ({ heard, named, told, mind, takeOff }: Props) => {
  const quoted = (spans: readonly { readonly from: number; readonly to: number }[]) =>
    [...new Set(spans.map(({ from, to }) => `“${heard.text.slice(from, to)}”`))].join(', ');
  const tapped = Object.entries(told).flatMap(([name, value]): Strip[] => {
    const ask = askOf(mind, name);
    const says = ask && isKeyOf(SAID, value) ? `${ask} ${SAID[value]}` : factWords(choices, name, value);
    return says ? [{ name, says, rests: '' }] : [];
  });
  const facts = heard.facts
    .filter((fact) => isTaken(fact) && !Object.hasOwn(told, fact.fact))
    .flatMap(({ fact, value, range, rests }): Strip[] => {
      const says = factWords(choices, fact, value, range);
      return says ? [{ name: fact, says, rests: quoted(rests) }] : [];
    });
  const among = heard.among
    .filter(({ fact }) => !Object.hasOwn(told, fact))
    .map(({ fact, values, rests }): Strip => {
      const words = values.flatMap((value) => factWords(choices, fact, value) ?? []);
      return { name: fact, says: words.join(' or '), rests: quoted(rests) };
    });
  const dangers = heard.dangers.flatMap(({ rule, rests }): Strip[] => {
    const title = mind.dangers.find(({ id }) => id === rule)?.title;
    return title ? [{ name: dangerName(rule), says: title, rests: quoted(rests) }] : [];
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
