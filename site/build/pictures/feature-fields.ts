import { z } from 'zod';
import { BODIES } from '#engine/model/board/bodies.ts';
import { RELIEF } from '#engine/model/board/relief.ts';
import { SHEENS } from '#engine/model/board/sheens.ts';
import { TINTS } from '#engine/model/board/tints.ts';
import { VEILS } from '#engine/model/board/veils.ts';
import type { BoardRecipe } from '#engine/model/board.ts';

/** What an author may write of a feature: its name, what may stand there with its unit, what stands there if it is left out. */
type FeatureField = {
  readonly name: string;
  readonly values: string;
  readonly usually: string;
  readonly what: string;
};
export type FeatureSheet = {
  readonly kind: string;
  readonly what: string;
  readonly fields: readonly FeatureField[];
};

type Json = {
  readonly description?: string;
  readonly default?: unknown;
  readonly enum?: readonly string[];
  readonly type?: string;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly prefixItems?: readonly Json[];
};

const UNITS: readonly (readonly [ending: RegExp, unit: string])[] = [
  [/-mm$|^at$/, 'mm'],
  [/-um$/, 'µm'],
  [/^angle$/, 'degrees'],
];

const unitOf = (name: string): string => {
  const unit = UNITS.find(([ending]) => ending.test(name))?.[1];
  return unit ? ` ${unit}` : '';
};

/** What may stand at a field, as an author would say it. */
const valuesOf = (name: string, { enum: choices, type, minimum, maximum, prefixItems }: Json): string => {
  if (choices) return choices.join(', ');
  if (type === 'boolean') return 'true, false';
  const [pair] = prefixItems ?? [];
  if (name === 'at') return '[from the left, from the top] mm';
  if (pair) return `[least, most] of ${pair.minimum} to ${pair.maximum}${unitOf(name)}`;
  const whole = type === 'integer' ? ', whole' : '';
  return `${minimum} to ${maximum}${unitOf(name)}${whole}`;
};

const usualOf = (name: string, { default: usual }: Json): string => {
  if (usual === undefined) return name === 'at' ? 'placed by the seed' : '';
  return Array.isArray(usual) ? `[${usual.join(', ')}]` : String(usual);
};

type Option = { readonly shape: Readonly<Record<string, z.core.$ZodType>> };

const sheetOf = ({ shape }: Option): FeatureSheet => {
  const { kind, ...fields } = shape;
  const json = (field: z.core.$ZodType): Json => z.toJSONSchema(field, { io: 'input' }) as Json;
  const { const: name = '', description = '' } = (kind ? z.toJSONSchema(kind) : {}) as {
    const?: string;
    description?: string;
  };
  return {
    kind: name,
    what: description,
    fields: Object.entries(fields).map(([field, schema]) => {
      const as = json(schema);
      return {
        name: field,
        values: valuesOf(field, as),
        usually: usualOf(field, as),
        what: as.description ?? '',
      };
    }),
  };
};

/** Every feature that the renderer draws, by group, read off the schema that checks the recipes. */
export const FEATURE_GROUPS: readonly {
  readonly name: string;
  readonly what: string;
  readonly features: readonly FeatureSheet[];
}[] = [
  { name: 'veils', what: 'Light scattered in or on the film: white, blue or gray', group: VEILS },
  { name: 'tints', what: 'Changes of color, in the film or below it', group: TINTS },
  { name: 'relief', what: 'Heights and hollows of the film', group: RELIEF },
  { name: 'sheens', what: 'Differences of gloss and of film, and wear', group: SHEENS },
  { name: 'bodies', what: 'Foreign bodies in and on the film', group: BODIES },
].map(({ name, what, group }) => ({
  name,
  what,
  features: (group as readonly Option[]).map(sheetOf),
}));

/** A board of a flaw, and where it is written. */
export type WrittenBoard = { readonly file: string; readonly recipe: BoardRecipe };

/** The board that shows a feature with least beside it; undefined where no board has it. */
export const shownBest = (boards: readonly WrittenBoard[], kind: string): WrittenBoard | undefined =>
  boards
    .filter(({ recipe }) => recipe.features.some((feature) => feature.kind === kind))
    .sort((one, two) => one.recipe.features.length - two.recipe.features.length)[0];
