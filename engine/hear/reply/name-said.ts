import type { ReplyWords } from '../../model/reply-words.ts';
import { filled } from '../../plain/filled.ts';
import { lower } from '../../plain/text.ts';
import type { Considered } from '../belief/consider.ts';

const any = (words: readonly string[]): string => `\\b(?:${words.join('|')})\\b`;

/** How the names of flaws stand in a sentence. */
export type NameSaid = {
  /** Begins with what is many, before it says where or of what: "Marks from heat", "Runs and sags". */
  readonly isSeveral: (name: string) => boolean;
  /** A sentence of its own: "The finish in the can has gone bad". */
  readonly isWhole: (name: string) => boolean;
  /** One coat or film takes an article; what is in it or on it does not. */
  readonly inSentence: (name: string) => string;
};

export const nameSaid = ({ names }: Pick<ReplyWords, 'names'>): NameSaid => {
  const several = new RegExp(any(names.several), 'i');
  const head = new RegExp(`^.*?(?=:|${any(names.where)}|$)`, 'i');
  const one = new RegExp(
    `^(?!.*?${any(names['one-of-it'])}.*${any(names.one)})[\\w, ]+?${any(names.one)}`,
    'i',
  );
  const whole = new RegExp(`^(?:${names.whole.join('|')})\\b.*${any(names.tells)}`);
  return {
    isSeveral: (name) => several.test(head.exec(name)?.[0] ?? name),
    isWhole: (name) => whole.test(name),
    inSentence: (name) =>
      one.test(name) ? `${/^[aeiou]/i.test(name) ? 'an' : 'a'} ${lower(name)}` : lower(name),
  };
};

/** What it most likely is, in words no surer than the chances. */
export const whatItIs = ({ likely }: Pick<Considered, 'likely'>, words: ReplyWords): string => {
  const [first, second, third] = likely;
  if (!first) return '';
  const { isSeveral, isWhole, inSentence } = nameSaid(words);
  const said = words.sure.find(({ from }) => first.chance >= from);
  if (said && isWhole(first.name)) return `${said.whole} ${lower(first.name)}.`;
  if (said) return `${isSeveral(first.name) ? said.several : said.one} ${inSentence(first.name)}.`;
  const { unsure, or } = words.says.what;
  const names = [first, second, third]
    .flatMap((one) => (one ? [lower(one.name)] : []))
    .reduceRight((more, name) => filled(or, { name, more }));
  return filled(unsure, { names });
};
