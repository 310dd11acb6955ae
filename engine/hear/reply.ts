import type { Considered } from './consider.ts';

export type ReplyOptions = {
  /** The address of the page of a flaw, with its site. */
  readonly linkTo: (defect: string) => string;
};

/** A reply to copy: `short` has 500 characters at most. */
export type Reply = { readonly short: string; readonly long: string };

const SHORT = 500;
/** How sure is said in words, never more than the engine is. */
const HOW_SURE: readonly (readonly [from: number, words: string])[] = [
  [0.9, 'This looks like'],
  [0.6, 'Most likely this is'],
  [0.3, 'This may be'],
];

const lower = (name: string): string => `${name.slice(0, 1).toLowerCase()}${name.slice(1)}`;

/** What it most likely is, in words no surer than the chances. */
const whatItIs = ({ likely }: Considered): string => {
  const [first, second, third] = likely;
  if (!first) return '';
  const said = HOW_SURE.find(([from]) => first.chance >= from);
  if (said) return `${said[1]}: ${lower(first.name)}.`;
  const names = [first, second, third].flatMap((one) => (one ? [lower(one.name)] : []));
  return `Hard to say from here. It could be: ${names.join('; or ')}.`;
};

/** Cautions that a short reply names after the first. */
const ALSO = 2;

const ended = (title: string): string => (/[.!?]$/.test(title) ? title : `${title}.`);

const firstSentence = (text: string): string => /^.*?[.!?](?=\s|$)/.exec(text)?.[0] ?? text;

/** Joins what fits into `most` characters, what comes first being kept first. Whole parts only, the last one always. */
const fitted = (parts: readonly string[], last: string, most: number): string => {
  const kept: string[] = [];
  let length = last.length;
  for (const part of parts.filter(Boolean)) {
    if (length + part.length + 1 > most) continue;
    kept.push(part);
    length += part.length + 1;
  }
  return [...kept, last].join(' ');
};

/**
 * A reply to somebody else's post: the most pressing caution first, what it most likely is, what to do now, what not to
 * do, the one thing to check, the link.
 */
export const reply = (considered: Considered, { linkTo }: ReplyOptions): Reply => {
  const { likely, warnings, now, next } = considered;
  const [first] = likely;
  const link = first ? linkTo(first.defect) : '';
  const [pressing, ...others] = warnings;
  const named = others.slice(0, ALSO).map(({ title }) => ended(title));
  const shortWarning = pressing ? `First: ${ended(pressing.title)} ${firstSentence(pressing.say)}` : '';
  const shortAlso = named.length ? `Mind too: ${named.join(' ')}` : '';
  const allWarnings = warnings.map(({ title, say }, at) => `${at ? 'And' : 'First'}: ${ended(title)} ${say}`);
  const what = whatItIs(considered);
  const doing = now?.sure || now?.flaw ? `${now.verdict}. ${now.say}` : 'Until it is clear, leave it alone.';
  const not = now?.sure ? now.not : 'No sanding and no new coat before you know.';
  const check =
    next?.kind === 'question'
      ? `One thing to check: ${next.ask} ${next.how}`
      : next?.kind === 'stage'
        ? 'One thing to tell: how dry is it, and when was the coat laid?'
        : next?.kind === 'age'
          ? 'One thing to tell: how old is the paint or varnish below?'
          : '';
  const otherFlaws = likely
    .slice(1, 3)
    .filter(({ chance }) => chance >= 0.1)
    .map(({ defect, name }) => `Or ${lower(name)}: ${linkTo(defect)}`);
  return {
    short: fitted(
      [shortWarning, shortAlso, what, firstSentence(doing), not, firstSentence(check)],
      link,
      SHORT,
    ),
    long: [...allWarnings, what, doing, not, check, link, ...otherFlaws].filter(Boolean).join('\n\n'),
  };
};
