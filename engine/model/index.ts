/** The service door: the schemas, for the readers of content and the open data set only. */
import type { z } from 'zod';
import { Defect } from './defect.ts';
import { DoingWords } from './doing.ts';
import type { EntryKind } from './kinds.ts';
import { Lesson } from './lesson.ts';
import { Product } from './product.ts';
import { Question } from './question.ts';
import { Remedy } from './remedy.ts';
import { Rule } from './rule.ts';
import { Source } from './source.ts';
import { Term } from './term.ts';

export const SCHEMAS = {
  defect: Defect,
  question: Question,
  remedy: Remedy,
  rule: Rule,
  product: Product,
  lesson: Lesson,
  source: Source,
  term: Term,
  doing: DoingWords,
} as const satisfies Record<EntryKind, z.ZodType>;

export { ID_PATTERN } from './ids.ts';
export { ENTRY_KINDS, type EntryKind, FOLDERS } from './kinds.ts';
