/** What editors read to complete, explain and check a file of content while it is written. */
import { z } from 'zod';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { Calls } from '#engine/model/calls.ts';
import { Care } from '#engine/model/care.ts';
import { Choices } from '#engine/model/choices.ts';
import { ClockTable } from '#engine/model/clock-words.ts';
import { FirstCoat } from '#engine/model/first-coat.ts';
import { Hands } from '#engine/model/hands.ts';
import { HearFacts, HearFlaws, HearLanguage, HearQuestions, HearWordKinds } from '#engine/model/hear.ts';
import { ENTRY_KINDS, type EntryKind, FOLDERS, SCHEMAS } from '#engine/model/index.ts';
import { Kin } from '#engine/model/kin.ts';
import { Plan } from '#engine/model/plan.ts';
import { PracticeWords } from '#engine/model/practice.ts';
import { ReplyTable } from '#engine/model/reply-words.ts';
import { Collected, Imagined, SaidOfPages } from '#engine/model/said.ts';
import { SearchWords } from '#engine/model/search-words.ts';
import { SharedActs, SharedSteps } from '#engine/model/shared.ts';
import { Sights } from '#engine/model/sights.ts';
import { HardWords } from './hard-words.ts';
import { HouseStyle } from './prose/house-style.ts';
import { Retired } from './retired.ts';

/** A JSON Schema, as far as it is changed here. */
export type Json = { [key: string]: unknown };

/** Tables of content, each with what may stand in it. */
export const TABLES: Readonly<Record<string, z.ZodType>> = {
  'acts.yaml': SharedActs,
  'calls.yaml': Calls,
  'care.yaml': Care,
  'choices.yaml': Choices,
  'clock.yaml': ClockTable,
  'first-coat.yaml': FirstCoat,
  'hands.yaml': Hands,
  'hard-words.yaml': HardWords,
  'house-style.yaml': HouseStyle,
  'plan.yaml': Plan,
  'retired.yaml': Retired,
  'sights.yaml': Sights,
  'steps.yaml': SharedSteps,
  'hear/collected.yaml': Collected,
  'hear/facts.yaml': HearFacts,
  'hear/flaws.yaml': HearFlaws,
  'hear/imagined.yaml': Imagined,
  'hear/kin.yaml': Kin,
  'hear/language.yaml': HearLanguage,
  'hear/pages.yaml': SaidOfPages,
  'hear/questions.yaml': HearQuestions,
  'hear/reply.yaml': ReplyTable,
  'hear/search-words.yaml': SearchWords,
  'hear/word-kinds.yaml': HearWordKinds,
  'practice/words.yaml': PracticeWords,
};

/** The name of the schema of a table: `hear/facts.yaml` is `hear-facts`. */
export const tableName = (file: string): string => file.replace(/\.yaml$/, '').replaceAll('/', '-');

const json = (schema: z.ZodType): Json => z.toJSONSchema(schema, { io: 'input', reused: 'ref' }) as Json;

const isJson = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Every object of a schema, inner ones first, as `change` leaves it. */
const rewritten = (value: unknown, change: (object: Json) => Json): unknown => {
  if (Array.isArray(value)) return value.map((item) => rewritten(item, change));
  if (!isJson(value)) return value;
  return change(
    Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, rewritten(inner, change)])),
  );
};

const has = (object: Json, ...keys: readonly string[]): boolean =>
  isJson(object['properties']) && keys.every((key) => key in (object['properties'] as Json));
const without = (object: Json, ...keys: readonly string[]): Json => {
  const { required, ...rest } = object;
  const left = Array.isArray(required) ? required.filter((key) => !keys.includes(key)) : [];
  return left.length ? { ...rest, required: left } : rest;
};

/** What is filled in by itself need not be written: the grade of a claim with a source, what the oldest change was. */
const lessRequired = (object: Json): Json => {
  if (has(object, 'says', 'grade')) return without(object, 'grade');
  if (has(object, 'on', 'what', 'why')) return without(object, 'what', 'why');
  if (has(object, 'do', 'say', 'not')) return without(object, 'do', 'say', 'not');
  return object;
};

/** A remedy as it is written: stages that are usual are left out, and a name stands for shared steps. */
const remedyAsWritten = (schema: Json): Json => {
  const properties = schema['properties'] as Json;
  const { now, steps } = properties as { now: Json; steps: Json };
  const as = {
    type: 'string',
    description: 'The kind of repair in content/acts.yaml whose usual acts are taken; film is usual.',
  };
  const name = { type: 'string', description: 'The name of shared steps in content/steps.yaml.' };
  return {
    ...schema,
    properties: {
      ...properties,
      now: {
        ...without(now, 'wet', 'setting', 'dry-to-touch', 'recoatable', 'cured'),
        properties: { as, ...(now['properties'] as Json) },
      },
      steps: { ...steps, items: { anyOf: [name, steps['items']] } },
    },
  };
};

/** What may stand in the front matter of each kind, as an author writes it. */
export const kindSchema = (kind: EntryKind): Json => {
  const written = rewritten(json(SCHEMAS[kind]), lessRequired) as Json;
  return kind === 'remedy' ? remedyAsWritten(written) : written;
};

/** What may stand in a table, as an author writes it. */
export const tableSchema = (file: string): Json => {
  const schema = TABLES[file];
  if (!schema) throw new Error(`no schema for content/${file}`);
  return json(schema);
};

/** Fields that name another entry, and its kind. */
const NAMES: Readonly<Record<string, EntryKind>> = {
  ask: 'question',
  remedy: 'remedy',
  defect: 'defect',
  flaw: 'defect',
  source: 'source',
};
const LISTS: Readonly<Record<string, EntryKind>> = {
  'look-alikes': 'defect',
  defects: 'defect',
  remedies: 'remedy',
  terms: 'term',
  rules: 'rule',
};

/** The schema of a kind with every id that is there, so that an editor completes them. */
export const kindSchemaWithIds = (kind: EntryKind, known: Knowledge): Json => {
  const ids = (of: EntryKind): string[] =>
    (known[FOLDERS[of]] as readonly { id: string }[]).map(({ id }) => id);
  const named = (object: Json): Json => {
    const properties = object['properties'];
    if (!isJson(properties)) return object;
    const filled = Object.entries(properties).map(([key, field]): [string, unknown] => {
      if (!isJson(field)) return [key, field];
      const one = NAMES[key];
      // A question of a file of its own is asked in words; in a tree it is named.
      if (one && 'pattern' in field && !('minLength' in field)) return [key, { ...field, enum: ids(one) }];
      const many = LISTS[key];
      if (many && isJson(field['items'])) return [key, { ...field, items: { enum: ids(many) } }];
      if (key === 'signs')
        return [
          key,
          {
            type: 'object',
            description: field['description'],
            properties: Object.fromEntries(
              known.questions.map(({ id, ask, how }) => [
                id,
                { description: `${ask} ${how}`, enum: ['yes', 'no', 'mostly-yes', 'mostly-no', 'either'] },
              ]),
            ),
            additionalProperties: false,
          },
        ];
      return [key, field];
    });
    return { ...object, properties: Object.fromEntries(filled) };
  };
  return rewritten(kindSchema(kind), named) as Json;
};

/** Every schema that lies in content/schema, by file name. */
export const committedSchemas = (): ReadonlyMap<string, string> =>
  new Map(
    [
      ...ENTRY_KINDS.map((kind): [string, Json] => [`${kind}.json`, kindSchema(kind)]),
      ...Object.keys(TABLES).map((file): [string, Json] => [`${tableName(file)}.json`, tableSchema(file)]),
    ].map(([name, schema]) => [name, `${JSON.stringify(schema, null, 1)}\n`]),
  );
