import { type Knowledge, knowledgeOf } from '#engine/knowledge/knowledge.ts';
import { Choices } from '#engine/model/choices.ts';
import type { ContentRoot } from './files.ts';
import { orThrow, readTable, type Table } from './table.ts';

/** The words of the forms, or every fault in them. They rest on no other content. */
export const choicesTable = (known: Knowledge, root: ContentRoot): Table<Choices> =>
  readTable(known, root, 'content/choices.yaml', Choices);

/** The words of the forms; throws every fault as a line `file:line: what; what to do`. */
export const readChoices = (root: ContentRoot): Choices => orThrow(choicesTable(knowledgeOf([]), root));
