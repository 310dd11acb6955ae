import { z } from 'zod';

/** A file name without its ending: lower-case words joined by hyphens. Ids are permanent. */
export const ID_PATTERN = /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/;

const id = <B extends string>(brand: B, what: string) =>
  z
    .string()
    .regex(ID_PATTERN, 'an id is lower-case words joined by hyphens, like a file name')
    .brand(brand)
    .describe(`The id of a ${what}: its file name without the ending.`);

export const DefectId = id('defect', 'defect');
export const QuestionId = id('question', 'question');
export const RemedyId = id('remedy', 'remedy');
export const RuleId = id('rule', 'rule');
export const SourceId = id('source', 'source');
export const ProductId = id('product', 'product');
export const LessonId = id('lesson', 'lesson');
export const TermId = id('term', 'glossary term');

export type DefectId = z.infer<typeof DefectId>;
export type QuestionId = z.infer<typeof QuestionId>;
export type RemedyId = z.infer<typeof RemedyId>;
export type RuleId = z.infer<typeof RuleId>;
export type SourceId = z.infer<typeof SourceId>;
export type ProductId = z.infer<typeof ProductId>;
export type LessonId = z.infer<typeof LessonId>;
export type TermId = z.infer<typeof TermId>;
