/** Cases of real trouble as they stand in the YAML files beside this. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { load } from 'js-yaml';
import { z } from 'zod';
import { FACTS } from '#engine/model/facts.ts';

const Facts = z.record(
  z.string().refine((name) => name in FACTS, 'is no fact of engine/model/facts.ts'),
  z.union([z.string(), z.number()]),
);

/**
 * What may be advised. A doing (leave, wait, lift …), the id of a remedy to repair by, `does:<step>` or
 * `does:<step>/<means>` for any repair whose steps hold that, or `stop` where a rule must stop the work.
 */
const Advice = z.string().regex(/^(does:)?[a-z][a-z0-9-]*(\/[a-z0-9-]+)?$/);

const Case = z.strictObject({
  title: z.string().min(8),
  source: z.string().describe('A file of content/sources, common-practice, or invented.'),
  says: z.string().min(12).optional().describe('The fact of the source that settles the case.'),
  defect: z.string().describe('The page that she enters by.'),
  facts: Facts,
  yes: z.array(z.string()).default([]).describe('Questions that she would answer yes.'),
  no: z
    .array(z.string())
    .default([])
    .describe('Questions that she would answer no; others she can not tell.'),
  right: z.enum(['normal', 'stop', 'act']).default('act'),
  acceptable: z.array(Advice).min(1),
  forbidden: z.array(Advice).default([]).describe('Doings, kinds of step or remedies never to be advised.'),
  stops: z.array(z.string()).default([]).describe('Stop rules that must come before the work.'),
  cause: z.string().optional().describe('A pattern that the cause told in the end must fit, by the source.'),
  also: z
    .strictObject({
      defect: z.string(),
      acceptable: z.array(Advice).min(1),
      forbidden: z.array(Advice).default([]),
    })
    .optional()
    .describe('A second flaw on the same piece, walked after the first with the facts kept.'),
});

export type TroubleCase = z.infer<typeof Case> & { readonly file: string };

/** Every case below `folder`; a file that does not fit the shape throws with its name. */
export const readCases = (folder: string): TroubleCase[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .flatMap((file) => {
      const cases = z.array(Case).safeParse(load(readFileSync(join(folder, file), 'utf8')));
      if (!cases.success) throw new Error(`${file}: ${z.prettifyError(cases.error)}`);
      return cases.data.map((one) => ({ ...one, file }));
    });
