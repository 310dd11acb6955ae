import { z } from 'zod';
import { ENTRY_KINDS, FOLDERS, SCHEMAS } from '#engine/model/index.ts';
import { knowledge } from './knowledge.ts';

/** The knowledge base as one plain object: a list for each kind, named like its folder. */
export const dataSet = () =>
  Object.fromEntries(
    ENTRY_KINDS.map((kind) => [
      FOLDERS[kind],
      knowledge[FOLDERS[kind]].map(({ kindOf: _kind, file: _file, lineOf: _line, ...entry }) => entry),
    ]),
  );

/** A schema set into a larger one: its references point into its own place there. */
const placed = <T extends object>(schema: T, kind: string): T =>
  JSON.parse(JSON.stringify(schema).replaceAll('"#/$defs/', `"#/$defs/${kind}/$defs/`));

/** A JSON Schema for the data set: one definition a kind, each with the id that the file name gives. */
export const dataSchema = () => {
  const definitions = ENTRY_KINDS.map((kind) => {
    const { $schema: _draft, ...schema } = placed(z.toJSONSchema(SCHEMAS[kind], { io: 'input' }), kind);
    const { properties = {}, required = [] } = schema;
    return [
      kind,
      { ...schema, properties: { id: { type: 'string' }, ...properties }, required: ['id', ...required] },
    ] as const;
  });
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'Halfdry',
    type: 'object',
    properties: Object.fromEntries(
      ENTRY_KINDS.map((kind) => [FOLDERS[kind], { type: 'array', items: { $ref: `#/$defs/${kind}` } }]),
    ),
    required: Object.values(FOLDERS),
    $defs: Object.fromEntries(definitions),
  };
};
