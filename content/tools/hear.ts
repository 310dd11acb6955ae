import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { load } from 'js-yaml';
import { buildLexicon, dryHoursOf, type Hearing } from '#engine/hear.ts';
import { type Knowledge, knowledgeOf } from '#engine/knowledge.ts';
import { HearFacts, HearLanguage, HearQuestions } from '#engine/model/hear.ts';
import { Words } from '#engine/model/words.ts';
import { orThrow, readTable, type Table } from './table.ts';

const FOLDER = 'content/hear';

export const languageTable = (known: Knowledge, root: string): Table<HearLanguage> =>
  readTable(known, root, `${FOLDER}/language.yaml`, HearLanguage);
export const factsTable = (known: Knowledge, root: string): Table<HearFacts> =>
  readTable(known, root, `${FOLDER}/facts.yaml`, HearFacts);
/** Every question that it names must be there. */
export const questionsTable = (known: Knowledge, root: string): Table<HearQuestions> =>
  readTable(known, root, `${FOLDER}/questions.yaml`, Object.assign(HearQuestions, { shape: {} }), (value) =>
    Object.keys(value).map((id) => ({ kind: 'question' as const, id, path: [id] })),
  );

/** The lay words of the search, which the ear reads spellings from. */
export const readWords = (root: string): Words =>
  Words.parse(load(readFileSync(join(root, 'content/words.yaml'), 'utf8')));

/** The ear of the content below `root`; throws every fault as a line. */
export const readHearing = (known: Knowledge, root: string): Hearing => ({
  lexicon: buildLexicon(
    known,
    {
      language: orThrow(languageTable(knowledgeOf([]), root)),
      facts: orThrow(factsTable(knowledgeOf([]), root)),
      questions: orThrow(questionsTable(known, root)),
    },
    readWords(root),
  ),
  dry: dryHoursOf(known),
});
