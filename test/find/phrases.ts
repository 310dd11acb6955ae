import { readFileSync } from 'node:fs';
import { load } from 'js-yaml';
import { z } from 'zod';
import type { FindDocument } from '#engine/find.ts';
import { Kin } from '#engine/model/kin.ts';
import { SearchWords } from '#engine/model/search-words.ts';

const Phrases = z.strictObject({
  good: z.array(
    z.strictObject({
      say: z.string(),
      kind: z.enum(['name', 'description', 'misspelled']),
      is: z.array(z.string()).min(1),
      heldOut: z.boolean().default(false),
    }),
  ),
  offTopic: z.array(
    z.strictObject({
      say: z.string(),
      heldOut: z.boolean().default(false),
      near: z.boolean().default(false),
    }),
  ),
});
export type Phrases = z.infer<typeof Phrases>;

const Corpus = z.array(
  z.strictObject({
    id: z.string(),
    title: z.string(),
    also: z.array(z.string()),
    signs: z.array(z.string()),
    text: z.string(),
  }),
);

const yaml = (path: string): unknown => load(readFileSync(new URL(path, import.meta.url), 'utf8'));

export const phrases: Phrases = Phrases.parse(yaml('./phrases.yaml'));

/** One document a flaw of the evidence, whatever the content holds. */
export const corpus: FindDocument[] = Corpus.parse(yaml('./corpus.yaml')).map((entry) => ({
  ...entry,
  kind: 'defect',
}));

export const kin: Kin = Kin.parse(yaml('../../content/hear/kin.yaml'));

export const words: SearchWords = SearchWords.parse(yaml('../../content/hear/search-words.yaml'));
