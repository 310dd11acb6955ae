import { z } from 'zod';
import { ENTRY_KINDS, FOLDERS, SCHEMAS } from '#engine/model/index.ts';
import { knowledge } from './knowledge.ts';

/** The form of the file: raised when a reader of the old form would misread the new one. */
const VERSION = 1;
const LICENSE = 'CC-BY-4.0';

/** The day of the newest note on a change, so that the same content gives the same file. */
const changedOn = (): string =>
  [...knowledge.defects, ...knowledge.remedies]
    .flatMap(({ changes }) => changes.map(({ on }) => on))
    .sort()
    .at(-1) ?? '';

/** The knowledge base as one plain object: what it is, and a list for each kind, named like its folder. */
export const dataSet = () => ({
  version: VERSION,
  changed: changedOn(),
  license: LICENSE,
  ...Object.fromEntries(
    ENTRY_KINDS.map((kind) => [
      FOLDERS[kind],
      knowledge[FOLDERS[kind]].map(({ kindOf: _kind, file: _file, lineOf: _line, ...entry }) => entry),
    ]),
  ),
});

/** A schema set into a larger one: its references point into its own place there. */
const placed = (schema: object, kind: string): unknown =>
  JSON.parse(JSON.stringify(schema).replaceAll('"#/$defs/', `"#/$defs/${kind}/$defs/`));

/** A JSON Schema for the data set: one definition a kind, each with the id that the file name gives. */
export const dataSchema = () => {
  const definitions = ENTRY_KINDS.map((kind) => {
    const { $schema: _draft, ...schema } = z.toJSONSchema(SCHEMAS[kind], { io: 'input' });
    const { properties = {}, required = [] } = schema;
    const whole = {
      ...schema,
      properties: { id: { type: 'string' }, ...properties },
      required: ['id', ...required],
    };
    return [kind, placed(whole, kind)] as const;
  });
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'Halfdry',
    type: 'object',
    properties: {
      version: { const: VERSION },
      changed: { type: 'string', format: 'date' },
      license: { const: LICENSE },
      ...Object.fromEntries(
        ENTRY_KINDS.map((kind) => [FOLDERS[kind], { type: 'array', items: { $ref: `#/$defs/${kind}` } }]),
      ),
    },
    required: ['version', 'changed', 'license', ...Object.values(FOLDERS)],
    $defs: Object.fromEntries(definitions),
  };
};
