import type { ValueOf } from '#engine/model/facts.ts';
import type { Step } from '#engine/model/step.ts';
import { lower } from '#engine/plain/text.ts';
import { choices } from '../shared/choices.ts';

type Part = ValueOf<'part'>;

/** Facts whose answers name a thing, as it can stand behind "if yours is". */
const NAMED: Readonly<Record<string, { readonly values: Readonly<Record<string, string>> }>> = {
  family: choices.family,
};

/** "On an edge": where the step is done, as its heading. */
const placed = (values: readonly string[]): string => {
  const [first = '', ...others] = values.map((value) => choices.part.values[value as Part]);
  return OR.format([first, ...others.map(lower)]);
};

const OR = new Intl.ListFormat('en-US', { type: 'disjunction' });

/** For whom a step is that not all take, as its heading says it. */
export const onlyIf = ({ when }: Pick<Step, 'when'>): string => {
  const [[fact = '', test] = [], ...others] = Object.entries(when ?? {});
  const words = NAMED[fact]?.values;
  const wanted = typeof test === 'string' ? [test] : test;
  if (fact === 'part' && !others.length && Array.isArray(wanted)) return placed(wanted.map(String));
  if (!words || others.length || !Array.isArray(wanted)) return 'If it applies to yours';
  const names = wanted.map((value) => words[String(value)]?.split(',')[0]?.toLowerCase());
  const known = names.filter((name) => name !== undefined);
  return known.length < names.length ? 'If it applies to yours' : `If yours is ${OR.format(known)}`;
};
