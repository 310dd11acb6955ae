import { patternOfWordings } from '#engine/hear/words/wordings.ts';
import { buildLexicon, dryHoursOf, type HearContent, type Hearing, waitsOf } from '#engine/hear.ts';
import { type Knowledge, knowledgeOf } from '#engine/knowledge/knowledge.ts';
import { HearFacts, HearFlaws, HearLanguage, HearQuestions, HearWordKinds } from '#engine/model/hear.ts';
import { REPLY_HANDS_OFF, ReplyTable, replySaysOf, replyWordsOf } from '#engine/model/reply-words.ts';
import { SearchWords } from '#engine/model/search-words.ts';
import { keysOf } from '#engine/plain/entry-of.ts';
import { readChoices } from './choices.ts';
import type { ContentRoot } from './files.ts';
import { mentionOf } from './mention.ts';
import { readPlan } from './plan.ts';
import { saidFaults } from './said-faults.ts';
import { orThrow, readTable, shapedTable, type Table } from './table.ts';

const FOLDER = 'content/hear';

/** Every page that an answer leads to must be there. */
export const languageTable = (known: Knowledge, root: ContentRoot): Table<HearLanguage> =>
  readTable(known, root, `${FOLDER}/language.yaml`, HearLanguage, ({ 'asks-for': asksFor, tables }) => [
    ...asksFor.flatMap(({ page, beside }, at) => [
      ...mentionOf(page, ['asks-for', at, 'page']),
      ...beside.map((id, i) => ({ kind: 'question' as const, id, path: ['asks-for', at, 'beside', i] })),
    ]),
    ...tables.beside.map((id, at) => ({
      kind: 'question' as const,
      id,
      path: ['tables', 'beside', at],
    })),
    ...keysOf(tables).flatMap((key) => {
      const said = tables[key];
      return typeof said === 'string' || !('page' in said)
        ? []
        : mentionOf(said.page, ['tables', key, 'page']);
    }),
  ]);
export const factsTable = (known: Knowledge, root: ContentRoot): Table<HearFacts> =>
  readTable(known, root, `${FOLDER}/facts.yaml`, HearFacts);
/** Every question that it names must be there. */
export const questionsTable = (known: Knowledge, root: ContentRoot): Table<HearQuestions> =>
  readTable(known, root, `${FOLDER}/questions.yaml`, Object.assign(HearQuestions, { shape: {} }), (value) =>
    Object.keys(value).map((id) => ({ kind: 'question' as const, id, path: [id] })),
  );

/** Every flaw that it names must be there. */
export const flawsTable = (known: Knowledge, root: ContentRoot): Table<HearFlaws> =>
  readTable(known, root, `${FOLDER}/flaws.yaml`, HearFlaws, ({ names }) =>
    names.flatMap(({ is }, at) =>
      is.map((id, i) => ({ kind: 'defect' as const, id, path: ['names', at, 'is', i] })),
    ),
  );

export const wordKindsTable = (known: Knowledge, root: ContentRoot): Table<HearWordKinds> =>
  readTable(known, root, `${FOLDER}/word-kinds.yaml`, HearWordKinds);

const REPLY = `${FOLDER}/reply.yaml`;

/** What a reply says: what orders hands names its ground, each is understood at once, and none sends a hand to a wet film. */
export const replyTable = (known: Knowledge, root: ContentRoot): Table<ReplyTable> => {
  const table = readTable(known, root, REPLY, ReplyTable);
  if (!table.ok) return table;
  const issues = saidFaults(REPLY, replySaysOf(table.value), REPLY_HANDS_OFF, table.lineOf);
  return issues.length ? { ok: false, issues } : table;
};

export const searchWordsTable = (known: Knowledge, root: ContentRoot): Table<SearchWords> =>
  readTable(known, root, `${FOLDER}/search-words.yaml`, SearchWords);

/** What the search passes over; the ear reads the spellings of it. */
export const readSearchWords = (root: ContentRoot): SearchWords =>
  orThrow(searchWordsTable(knowledgeOf([]), root));

/** What the ear hears, as authors wrote it; throws every fault as a line. */
export const readHearContent = (known: Knowledge, root: ContentRoot): HearContent => ({
  language: orThrow(languageTable(known, root)),
  facts: orThrow(factsTable(knowledgeOf([]), root)),
  questions: orThrow(questionsTable(known, root)),
  flaws: orThrow(flawsTable(known, root)),
  kinds: orThrow(wordKindsTable(knowledgeOf([]), root)),
  reply: replyWordsOf(orThrow(shapedTable(root, REPLY, ReplyTable)), patternOfWordings),
});

/** The ear of the content below `root`; throws every fault as a line. */
export const readHearing = (known: Knowledge, root: ContentRoot): Hearing => ({
  lexicon: buildLexicon(known, readHearContent(known, root), readSearchWords(root)),
  dry: dryHoursOf(known),
  waits: waitsOf(known, readChoices(root), readPlan(known, root)),
});
