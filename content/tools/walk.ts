/** `npm run walk -- <defect> [--fact name=value …] [question=yes|no|unsure …] [--for-cause] [--json]` */
import { parseArgs } from 'node:util';
import {
  type Action,
  type Answer,
  type Case,
  cautionsApart,
  emptyCase,
  remediesTold,
  resolve,
  type Walked,
  walk,
} from '#engine/index.ts';
import type { Knowledge } from '#engine/knowledge.ts';
import { FACTS } from '#engine/model/facts.ts';
import { nearest } from '#engine/nearest.ts';
import { say } from '#engine/say.ts';
import { CLOCK_FACTS, withClock } from './clock-facts.ts';
import { linkedKnowledge } from './knowledge.ts';

const fail = (message: string): never => {
  console.error(message);
  process.exit(1);
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
const shapes = FACTS as Record<string, Shape>;

const withTold = (known: Knowledge, on: Case, text: string): Case => {
  const [name, value] = pair(text);
  const shape = shapes[name];
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
  return { ...on, [name]: { value: value as Answer, how: 'answered' } };
};

/** A `--fact` names a fact of the table or a question; anything else is told with the nearest name. */
const told = (known: Knowledge, on: Case, text: string): Case =>
  known.has('question', pair(text)[0]) ? withAnswered(known, on, text) : withTold(known, on, text);

const print = (known: Knowledge, on: Case, walked: Walked) => {
  for (const stop of walked.fired.stops)
    console.log(`STOP FIRST: ${stop.title}\n  ${stop.say}\n  ${stop.defers}`);
  for (const hold of walked.fired.holds) console.log(`Hold: ${hold.title}. ${hold.say}`);
  if (walked.kind === 'stage') {
    console.log('How dry is it?');
    console.log(
      `  --fact stage=${shapes['stage']?.kind === 'choice' ? shapes['stage'].values.join(' | ') : ''}`,
    );
  } else if (walked.kind === 'question') {
    const question = known.get('question', walked.question);
    console.log(`${question.ask}\n  How to check: ${question.how}`);
    console.log(`  ${question.id}=yes     ${question.yes}`);
    console.log(`  ${question.id}=no      ${question.no}`);
    console.log(`  ${question.id}=unsure  ${question.sure}`);
  } else {
    if (walked.kind === 'outcome') {
      printAction(walked.action);
      if (walked.unsureAt) console.log(`To be sure: ${known.get('question', walked.unsureAt).sure}`);
    }
    printCauses(walked);
    for (const remedy of remediesTold(walked)) printSteps(known, on, remedy);
    for (const rule of cautionsApart(known, on, walked))
      console.log(`\nCaution: ${rule.title}\n  ${rule.say}\n  ${rule.defers}`);
    if (walked.kind === 'outcome' && walked.goOn)
      console.log(`To find the cause anyway: --for-cause (next: ${walked.goOn})`);
  }
};

const printAction = (action: Action) => {
  console.log(
    `${action.verdict.toUpperCase()}\n  ${action.say}\n  Not now: ${action.not}\n  ${action.again}`,
  );
};

const printCauses = (walked: Walked) => {
  for (const leaf of walked.leaves)
    console.log(
      `${walked.leaves.length > 1 ? 'Possible' : 'Cause'}: ${leaf.cause ?? ('leave' in leaf ? leaf.leave : leaf.remedy)}`,
    );
};

const printSteps = (known: Knowledge, on: Case, remedy: string) => {
  const entry = known.get('remedy', remedy);
  console.log(`\n${entry.name} (${remedy})`);
  for (const [index, step] of resolve(known, remedy, on).entries()) {
    for (const rule of step.before) console.log(`   ! ${rule.title}: ${rule.say}`);
    console.log(`  ${index + 1}. ${step.grit ? `[${step.grit}] ` : ''}${step.say}`);
    for (const rule of step.limits) console.log(`     limit: ${rule.say}`);
  }
  console.log(`  Worked if: ${entry.worked}\n  If not: ${entry['if-not'].say}`);
};

const isOfClock = (text: string): boolean => (CLOCK_FACTS as readonly string[]).includes(pair(text)[0]);

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

const read = () => {
  try {
    return parseArgs({
      allowPositionals: true,
      options: {
        fact: { type: 'string', multiple: true, default: [] },
        json: { type: 'boolean', default: false },
        'for-cause': { type: 'boolean', default: false },
      },
    });
  } catch (error) {
    return fail(
      `${(error as Error).message.split('. ')[0]}; options: --fact name=value, --for-cause, --json`,
    );
  }
};

const { values, positionals } = read();
const { known, issues } = linkedKnowledge(process.cwd());
if (!known) fail(`the content does not link:\n${issues.map(say).join('\n')}`);
else {
  const [defect, ...answers] = positionals;
  if (!defect)
    fail('which defect? npm run walk -- <defect> [--fact name=value …] [question=answer …] [--json]');
  else if (!known.has('defect', defect))
    unknown(
      'defect',
      defect,
      known.defects.map((one) => one.id),
    );
  else {
    let on = emptyCase();
    for (const text of values.fact.filter((one) => !isOfClock(one))) on = told(known, on, text);
    for (const text of answers) on = withAnswered(known, on, text);
    const clock = clockOf(known, on, values.fact.filter(isOfClock));
    if (clock) {
      on = clock.on;
      if (clock.says && !values.json) console.log(clock.says);
    }
    const walked = walk(known, on, defect, { forCause: values['for-cause'] });
    if (values.json)
      console.log(JSON.stringify(walked, (key, value) => (key === 'lineOf' ? undefined : value), 2));
    else print(known, on, walked);
  }
}
