import { parseArgs } from 'node:util';
import { type Case, emptyCase } from '#engine/index.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { FACTS } from '#engine/model/facts.ts';
import { entryOf, isOneOf } from '#engine/plain/entry-of.ts';
import { nearest } from '#engine/plain/nearest.ts';
import { CLOCK_FACTS, withClock } from './clock-facts.ts';

/** What the author wrote can not be used; the message says why in one line. */
export class Refused extends Error {}

/** What is asked of `npm run walk`. */
export type Asked = {
  readonly defect: string;
  readonly on: Case;
  /** What the clock says of the coat, where it was told. */
  readonly clockSays: string | undefined;
  readonly forCause: boolean;
  /** What the stops ask for is done. */
  readonly settled: boolean;
  readonly json: boolean;
};

const fail = (message: string): never => {
  throw new Refused(message);
};

const unknown = (what: string, name: string, all: Iterable<string>): never => {
  const near = nearest(name, all);
  return fail(
    `there is no ${what} "${name}"; ${near ? `did you mean "${near}"?` : `known: ${[...all].join(', ')}`}`,
  );
};

const pair = (text: string): [string, string] => {
  const cut = text.indexOf('=');
  if (cut < 1) fail(`"${text}" is not name=value; write --fact stage=wet or round-spots=yes`);
  return [text.slice(0, cut), text.slice(cut + 1)];
};

type Shape =
  | { kind: 'choice'; values: readonly string[] }
  | { kind: 'number'; min: number; max: number; unit: string };

const withTold = (known: Knowledge, on: Case, text: string): Case => {
  const [name, value] = pair(text);
  const shape = entryOf<Shape>(FACTS, name);
  if (!shape) return unknown('fact', name, [...Object.keys(FACTS), ...known.questions.map((one) => one.id)]);
  if (shape.kind === 'choice') {
    if (!shape.values.includes(value))
      fail(`"${value}" is no value of ${name}; use one of ${shape.values.join(', ')}`);
    return { ...on, [name]: { value, how: 'told' } };
  }
  const number = Number(value);
  if (value === '' || !Number.isFinite(number) || number < shape.min || number > shape.max)
    fail(`${name} is "${value}"; it takes a number from ${shape.min} to ${shape.max} ${shape.unit}`);
  return { ...on, [name]: { value: number, how: 'told' } };
};

const withAnswered = (known: Knowledge, on: Case, text: string): Case => {
  const [name, value] = pair(text);
  if (!known.has('question', name))
    return unknown(
      'question',
      name,
      known.questions.map((one) => one.id),
    );
  if (!['yes', 'no', 'unsure'].includes(value)) fail(`${name} is "${value}"; answer yes, no or unsure`);
  return { ...on, [name]: { value, how: 'answered' } };
};

/** A `--fact` names a fact of the table or a question; anything else is told with the nearest name. */
const told = (known: Knowledge, on: Case, text: string): Case =>
  known.has('question', pair(text)[0]) ? withAnswered(known, on, text) : withTold(known, on, text);

const isOfClock = (text: string): boolean => isOneOf(CLOCK_FACTS, pair(text)[0]);

/** `product=` and `minutes-since-coat=` go together: the clock reckons the stage from them. */
const clockOf = (known: Knowledge, on: Case, texts: readonly string[]) => {
  if (!texts.length) return undefined;
  const { product, 'minutes-since-coat': since } = Object.fromEntries(texts.map(pair));
  if (!product || since === undefined)
    return fail(
      'product and minutes-since-coat go together: --fact product=shellac --fact minutes-since-coat=20',
    );
  if (!known.has('product', product))
    return unknown(
      'product',
      product,
      known.products.map((one) => one.id),
    );
  const minutes = Number(since);
  if (since === '' || !Number.isFinite(minutes) || minutes < 0 || minutes > 525_600)
    return fail(`minutes-since-coat is "${since}"; it takes minutes from 0 to 525600`);
  return withClock(known, on, product, minutes);
};

const read = (args: readonly string[]) => {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        fact: { type: 'string', multiple: true, default: [] },
        json: { type: 'boolean', default: false },
        settled: { type: 'boolean', default: false },
        'for-cause': { type: 'boolean', default: false },
      },
    });
  } catch (error) {
    const [says] = error instanceof Error ? error.message.split('. ') : [];
    return fail(`${says}; options: --fact name=value, --for-cause, --settled, --json`);
  }
};

/** The arguments of `npm run walk` as a case. Throws `Refused` for the first that it can not use. */
export const readWalk = (known: Knowledge, args: readonly string[]): Asked => {
  const { values, positionals } = read(args);
  const [defect = '', ...answers] = positionals;
  if (!defect)
    fail('which defect? npm run walk -- <defect> [--fact name=value …] [question=answer …] [--json]');
  if (!known.has('defect', defect))
    unknown(
      'defect',
      defect,
      known.defects.map((one) => one.id),
    );
  let on = emptyCase();
  for (const text of values.fact.filter((one) => !isOfClock(one))) on = told(known, on, text);
  for (const text of answers) on = withAnswered(known, on, text);
  const clock = clockOf(known, on, values.fact.filter(isOfClock));
  return {
    defect,
    on: clock?.on ?? on,
    clockSays: clock?.says,
    forCause: values['for-cause'],
    settled: values.settled,
    json: values.json,
  };
};
