import { z } from 'zod';

/** A file name without its ending: lower-case words joined by hyphens. Ids are permanent. */
export const ID_PATTERN = /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/;

const Id = z
  .string()
  .regex(ID_PATTERN, 'write words in small letters joined by hyphens, like the name of a file')
  .describe('A file name without its ending.');

/** Brands keep the kinds of id apart for the compiler: a remedy is no question. */
export const DefectId = Id.brand<'defect'>();
export const QuestionId = Id.brand<'question'>();
export const RemedyId = Id.brand<'remedy'>();
export const RuleId = Id.brand<'rule'>();
export const SourceId = Id.brand<'source'>();
export const ProductId = Id.brand<'product'>();
export const LessonId = Id.brand<'lesson'>();
export const TermId = Id.brand<'term'>();

export type DefectId = z.infer<typeof DefectId>;
export type QuestionId = z.infer<typeof QuestionId>;
export type RemedyId = z.infer<typeof RemedyId>;
export type RuleId = z.infer<typeof RuleId>;
export type SourceId = z.infer<typeof SourceId>;
export type ProductId = z.infer<typeof ProductId>;
