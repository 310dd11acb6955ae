import type { ReplyWords } from '../../model/reply-words.ts';
import { filled } from '../../plain/filled.ts';
import { lower } from '../../plain/text.ts';
import type { Considered } from '../belief/consider.ts';
import type { NamedFlaw } from '../belief/named-flaws.ts';
import { SHORT } from './fitted.ts';
import type { Reply } from './reply.ts';

/** What no name calls and the whole text speaks against stands beside the first only from here on. */
const BESIDE = 0.02;

/** A reply that leaves no flaw out that the post names; the short one, as far as it has room. */
export const withNamed = (
  { short, long }: Reply,
  named: readonly NamedFlaw[],
  { likely, stage }: Pick<Considered, 'likely' | 'stage'>,
  linkTo: (defect: string, stage?: Considered['stage']) => string,
  { what }: ReplyWords['says'],
): Reply => {
  const [first] = likely;
  const chanceOf = (defect: string) => likely.find((one) => one.defect === defect)?.chance ?? 1;
  const others = named.filter(
    ({ defect, called }) => defect !== first?.defect && (called || chanceOf(defect) >= BESIDE),
  );
  const told = others.filter(({ defect }) => !long.includes(linkTo(defect, stage)));
  const lead = ({ name, defect }: NamedFlaw): string =>
    `${filled(what.besides, { name: lower(name) })} ${linkTo(defect, stage)}`;
  const more = others.map(lead);
  const fits = more.filter((_, at) => [short, ...more.slice(0, at + 1)].join('\n').length <= SHORT);
  return {
    short: [short.replace(/ (?=https?:\/\/\S+$)/, '\n'), ...fits].join('\n'),
    long: [long, ...told.map(lead)].join('\n\n'),
  };
};
