import type { Issue } from '#engine/faults/issue.ts';
import { buildLexicon, type HearContent, hearSigns } from '#engine/hear.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { isAsk, visits } from '#engine/knowledge/tree.ts';
import type { Defect } from '#engine/model/defect.ts';
import type { QuestionId } from '#engine/model/ids.ts';
import type { Entry } from '#engine/model/knowledge.ts';
import { isRecord } from '#engine/plain/record.ts';
import type { ContentRoot } from './files.ts';
import { readHearContent, readSearchWords } from './hear.ts';
import { readEntry } from './read.ts';

/** The signs as they stand in the file of a flaw, before those that questions settle for every flaw are added. */
const writtenIn = (root: ContentRoot, file: string): Readonly<Record<string, unknown>> => {
  const { data } = readEntry(root, 'defect', file);
  const signs = isRecord(data) ? data['signs'] : undefined;
  return isRecord(signs) ? signs : {};
};

/**
 * Signs that say what the question says of every flaw already. Written out they hide the few that tell something, and one
 * that was meant to differ is not seen to be the usual one.
 */
export function* needlessSigns(known: Knowledge, root: ContentRoot): Generator<Issue> {
  for (const { file, lineOf } of known.defects)
    for (const [question, sign] of Object.entries(writtenIn(root, file)))
      if (typeof sign === 'string' && sign === known.get('question', question)['every-flaw'])
        yield { file, line: lineOf(['signs', question], true), code: 'needless-sign', question, sign };
}

/** What a flaw says of what is seen, smelt and felt, and what people type who have it. */
const wordsOf = ({ name, summary, looks, shows, also, boards }: Defect): readonly string[] => [
  looks,
  summary,
  ...also,
  ...boards.map(({ alt }) => alt),
  shows,
  name,
];

type Ear = { readonly heard: HearContent; readonly lexicon: ReturnType<typeof buildLexicon> };
const ears = new WeakMap<Knowledge, Ear>();

/** The ear of this knowledge; building it takes longer than what is asked of it. */
const earOf = (known: Knowledge, root: ContentRoot): Ear => {
  const made = ears.get(known);
  if (made) return made;
  const heard = readHearContent(known, root);
  const ear = { heard, lexicon: buildLexicon(known, heard, readSearchWords(root)) };
  ears.set(known, ear);
  return ear;
};

const isMet = (sign: unknown): boolean => sign === 'yes' || sign === 'mostly-yes';

/** How many flaws must agree before one that says the opposite is asked about. */
const UNANIMOUS = 4;

/**
 * Signs that no other flaw bears out, and that the flaw's own words and tree do not either: a turned sign. Of `yes` where
 * other flaws alone ask the question and nobody else shows it; of `no` where all others that are sure say yes, or where
 * its own words say yes of a special mark that nobody else shows. What other facts tell is left to them.
 */
export function* signsThatStandAlone(known: Knowledge, root: ContentRoot): Generator<Issue> {
  const { lexicon } = earOf(known, root);
  const says = (defect: Entry<'defect'>, id: string) =>
    wordsOf(defect).some((text) =>
      hearSigns(lexicon, text).some(({ question, answer }) => question === id && answer === 'yes'),
    );
  const asksOf = new Map(
    known.defects.map(({ id, tree }) => [
      id,
      new Set<string>([...visits(tree)].flatMap(({ branch }) => (isAsk(branch) ? [branch.ask] : []))),
    ]),
  );
  for (const question of known.questions) {
    const { id, ask } = question;
    const signed = (...signs: readonly string[]) =>
      known.defects.filter((defect) => signs.includes(defect.signs[id as QuestionId] ?? ''));
    const [yes, no] = [signed('yes'), signed('no')];
    const asks = (defect: Entry<'defect'>) => asksOf.get(defect.id)?.has(id) === true;
    const tell = (
      { file, lineOf }: Entry<'defect'>,
      sign: 'yes' | 'no',
      why: 'alone' | 'asked' | 'words',
    ): Issue => ({
      file,
      line: lineOf(['signs', id], true),
      code: 'sign-differs',
      by: 'others',
      question: id,
      sign,
      why,
      ask,
    });
    const [only] = yes;
    if (only && yes.length === 1 && !question['every-flaw'] && question.known.length === 0)
      if (known.defects.some(asks) && !asks(only) && !says(only, id)) yield tell(only, 'yes', 'asked');
    const [alone] = no;
    if (alone && no.length === 1 && signed('mostly-no').length === 0 && yes.length >= UNANIMOUS)
      yield tell(alone, 'no', 'alone');
    if (question.usually === 'no' && !known.defects.some(({ signs }) => isMet(signs[id as QuestionId])))
      for (const defect of no) if (says(defect, id)) yield tell(defect, 'no', 'words');
  }
}

/** Letters by which two phrases begin alike. */
const SAME = 4;
/** Told at most, of words that are understood. */
const SOME = 3;
/** Some phrases that the ear takes for yes to a question, as they may be written; no two that begin alike. */
const wordsHeard = (
  lexicon: Ear['lexicon'],
  question: string,
  phrases: readonly string[],
): readonly string[] => {
  const found: string[] = [];
  for (const phrase of phrases) {
    const words = phrase
      .split(' ')
      .map((word) => word.replace(/\|.*$/, '').replace('=', ''))
      .join(' ');
    const begins = words.slice(0, SAME);
    if (found.length === SOME) break;
    if (found.some((other) => other.startsWith(begins))) continue;
    if (hearSigns(lexicon, words).some((sign) => sign.question === question && sign.answer === 'yes'))
      found.push(words);
  }
  return found;
};

/**
 * Special marks (questions that flaws usually answer with no) that a flaw is said to show for certain, and of which its
 * own words tell nothing: either a reader is not told what gives it away, or the sign is wrong.
 */
export function* untoldMarks(known: Knowledge, root: ContentRoot): Generator<Issue> {
  const { heard, lexicon } = earOf(known, root);
  // Of a new question nobody has said yet how people put it.
  const marks = new Set<string>(
    known.questions.flatMap(({ id, usually }) =>
      usually === 'no' && heard.questions[id]?.yes.length ? [id] : [],
    ),
  );
  for (const defect of known.defects) {
    const open = new Set(
      Object.entries(defect.signs).flatMap(([question, sign]) =>
        sign === 'yes' && marks.has(question) ? [question] : [],
      ),
    );
    for (const text of wordsOf(defect)) {
      if (open.size === 0) break;
      for (const { question, answer } of hearSigns(lexicon, text))
        if (answer === 'yes') open.delete(question);
    }
    for (const question of open)
      yield {
        file: defect.file,
        line: defect.lineOf(['signs', question], true),
        code: 'mark-untold',
        question,
        ask: known.get('question', question).ask,
        say: wordsHeard(lexicon, question, heard.questions[question]?.yes ?? []),
      };
  }
}
