import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { isAsk, visits } from '#engine/knowledge/tree.ts';
import type { Defect, Sign } from '#engine/model/defect.ts';
import { FAMILIES } from '#engine/model/family.ts';
import { FREQUENCY } from '#engine/model/frequency.ts';
import { isKeyOf, keysOf } from '#engine/plain/entry-of.ts';
import type { DraftDefect, DraftQuestion, DraftRemedy } from './draft.ts';
import type { ContentRoot } from './files.ts';
import { type Near, nearOf } from './near.ts';
import { ANSWERS, chosen, idOf, listed, questionId, refuseOthers, refuseSign, SIGN_OF } from './replies.ts';
import { signTable, tellingSign } from './telling-signs.ts';

/** One thing that is asked. `key` names it in a file of answers; an empty answer takes what is `usual`. */
export type Prompt = {
  readonly key: string;
  readonly lines: readonly string[];
  readonly ask: string;
  /** Told to someone who answers with a question mark. */
  readonly help?: string;
  /** What is wrong with an answer, or undefined. */
  readonly refuse?: (answer: string) => string | undefined;
};
/** Gives the answer to a prompt, the terminal's or a file's; empty for none. */
export type Answers = (prompt: Prompt) => Promise<string>;

/** What the interview came to: a flaw to be written, and what its look-alikes show of a new question. */
export type Interviewed = {
  readonly defect: DraftDefect;
  readonly mirrors: ReadonlyMap<string, Sign>;
};

/** Repairs and questions that are offered at most. */
const OFFERED = 12;
const MOST_REPAIRS = 3;
async function askAlike(
  near: readonly Near[],
  known: Knowledge,
  answers: Answers,
): Promise<readonly string[]> {
  const ids = near.map(({ id }) => id);
  const all = known.defects.map(({ id }) => id);
  const answer = await answers({
    key: 'alike',
    lines: [
      'These are near it. If one of them is what you mean, stop here (Ctrl-C) and add to its file instead:',
      ...listed(near),
    ],
    ask: 'Which of them, or which other flaws, is it mistaken for? Numbers or ids; Enter for the first three',
    refuse: (given) => refuseOthers([...ids, ...all])(chosen(given, ids).join(',')),
  });
  return answer ? chosen(answer, ids) : ids.slice(0, 3);
}

async function askFamilies(
  alike: readonly string[],
  known: Knowledge,
  answers: Answers,
): Promise<readonly string[]> {
  const first = alike[0] === undefined ? ['water-based'] : known.get('defect', alike[0]).families;
  const answer = await answers({
    key: 'families',
    lines: FAMILIES.map((family, at) => `  ${at + 1}. ${family}`),
    ask: `On which kinds of top coat is it met? Numbers; Enter for ${first.join(', ')}`,
    refuse: refuseOthers(FAMILIES),
  });
  return answer ? chosen(answer, FAMILIES) : first;
}

async function askOften(answers: Answers): Promise<Defect['often']> {
  const kinds = keysOf(FREQUENCY);
  const answer = await answers({
    key: 'often',
    lines: [],
    ask: `How often is it met? ${kinds.join(', ')}; Enter for occasional`,
    refuse: refuseOthers(kinds),
  });
  return isKeyOf(FREQUENCY, answer) ? answer : 'occasional';
}

/** Only the signs that tell it from what it is mistaken for, most telling first. */
async function askSigns(
  known: Knowledge,
  alike: readonly string[],
  families: readonly string[],
  answers: Answers,
): Promise<ReadonlyMap<string, Sign>> {
  const { matrix, settled } = signTable(known, families);
  const signs = new Map<string, Sign>();
  for (;;) {
    const id = tellingSign(matrix, alike, signs, settled);
    if (id === undefined) return signs;
    const { ask, how, yes, no } = known.get('question', id);
    const answer = await answers({
      key: `signs.${id}`,
      lines: signs.size === 0 ? [`What does it show? (${ANSWERS})`] : [],
      ask: `${signs.size + 1}. ${ask}`,
      help: `${how} Yes: ${yes} No: ${no}`,
      refuse: refuseSign,
    });
    signs.set(id, SIGN_OF[answer] ?? 'either');
  }
}

/** A mark of its own that no question asks yet, and what its look-alikes show of it. */
async function askMark(
  known: Knowledge,
  root: ContentRoot,
  alike: readonly string[],
  answers: Answers,
): Promise<{
  question: DraftQuestion | undefined;
  mirrors: ReadonlyMap<string, Sign>;
  also: string | undefined;
}> {
  const none = { question: undefined, mirrors: new Map<string, Sign>(), also: undefined };
  const ask = await answers({
    key: 'mark',
    lines: [],
    ask: 'Has it a mark that was not asked? As a question whose yes means this flaw, ending in "?"; Enter for none',
    refuse: (given) =>
      given === '' || /^.{7,}\?$/.test(given)
        ? undefined
        : 'write a whole question that ends with a question mark',
  });
  if (!ask) return none;
  const id = questionId(ask);
  const near = nearOf(known, root, 'question', id, [ask]);
  const same = near.length
    ? await answers({
        key: 'mark-is',
        lines: [
          'There are questions like it:',
          ...listed(near.map(({ id: one, title }) => ({ id: one, title }))),
        ],
        ask: 'Is it one of these? Its number; Enter for a new question',
        refuse: refuseOthers(near.map((one) => one.id)),
      })
    : '';
  if (same)
    return {
      ...none,
      also: chosen(
        same,
        near.map((one) => one.id),
      )[0],
    };
  const mirrors = new Map<string, Sign>();
  for (const other of alike) {
    const answer = await answers({
      key: `mirrors.${other}`,
      lines: [],
      ask: `And ${known.get('defect', other).name}: ${ask} Enter for no`,
      refuse: refuseSign,
    });
    mirrors.set(other, SIGN_OF[answer] ?? 'no');
  }
  return { question: { id: known.has('question', id) ? `${id}-too` : id, ask }, mirrors, also: undefined };
}

/** Repairs that the look-alikes' trees end in, the commonest first. */
const repairsOf = (known: Knowledge, alike: readonly string[]): readonly string[] => {
  const counts = new Map<string, number>();
  for (const id of alike)
    for (const { branch } of visits(known.get('defect', id).tree))
      if ('remedy' in branch) counts.set(branch.remedy, (counts.get(branch.remedy) ?? 0) + 1);
  return [...counts]
    .sort((a, b) => b[1] - a[1])
    .map(([id]) => id)
    .slice(0, OFFERED);
};

/** Questions that the look-alikes' trees ask. */
const askedBy = (known: Knowledge, alike: readonly string[]): readonly string[] => [
  ...new Set(
    alike.flatMap((id) =>
      [...visits(known.get('defect', id).tree)].flatMap(({ branch }) => (isAsk(branch) ? [branch.ask] : [])),
    ),
  ),
];

async function askRepairs(
  known: Knowledge,
  alike: readonly string[],
  deciding: readonly { readonly id: string; readonly title: string }[],
  answers: Answers,
): Promise<DraftDefect['remedies']> {
  const offered = repairsOf(known, alike);
  const answer = await answers({
    key: 'repairs',
    lines: listed(offered.map((id) => ({ id, title: known.get('remedy', id).name }))),
    ask: `What mends it? Numbers or ids, or a new one in words ("Cut the glue away"); at most ${MOST_REPAIRS}, with commas; Enter for later`,
    refuse: (given) =>
      chosen(given, offered).length > MOST_REPAIRS ? `at most ${MOST_REPAIRS} to begin with` : undefined,
  });
  const remedies = chosen(answer, offered).map((words): DraftRemedy => {
    const id = known.has('remedy', words) ? words : idOf(words);
    const there = known.has('remedy', id);
    return { id, there, name: there ? known.get('remedy', id).name : words };
  });
  const decided: { remedy: DraftRemedy; when: string | undefined }[] = [];
  const ids = deciding.map(({ id }) => id);
  for (const [at, remedy] of remedies.entries()) {
    const last = at === remedies.length - 1;
    const when = last
      ? ''
      : await answers({
          key: `decides.${remedy.id}`,
          lines: at === 0 ? listed(deciding) : [],
          ask: `Which question, answered yes, calls for "${remedy.name}" and not for the others? Its number or id`,
          refuse: (given) =>
            chosen(given, ids).every((id) => ids.includes(id) || known.has('question', id)) && given
              ? undefined
              : 'give the number of a question here, or the id of any other',
        });
    decided.push({ remedy, when: chosen(when, ids)[0] });
  }
  return decided;
}

/**
 * Asks what is needed to begin a flaw: what it is, what it is mistaken for, at most twelve signs, a mark of its own, and
 * what mends it. Nothing is written.
 */
export const interview = async (
  known: Knowledge,
  root: ContentRoot,
  id: string,
  answers: Answers,
): Promise<Interviewed> => {
  const spoken = id.replaceAll('-', ' ').replace(/^./, (first) => first.toUpperCase());
  const name =
    (await answers({ key: 'name', lines: [], ask: `What would she call it? Enter for "${spoken}"` })) ||
    spoken;
  const summary = await answers({
    key: 'summary',
    lines: [],
    ask: 'What is it, in a sentence or two?',
    refuse: (given) =>
      given && given.length < 20 ? 'say a little more: twenty letters at least' : undefined,
  });
  const near = nearOf(known, root, 'defect', id, [name, summary].filter(Boolean));
  const alike = await askAlike(near, known, answers);
  const families = await askFamilies(alike, known, answers);
  const often = await askOften(answers);
  const signs = new Map(await askSigns(known, alike, families, answers));
  const { question, mirrors, also } = await askMark(known, root, alike, answers);
  if (also) signs.set(also, 'yes');
  const titleOf = (one: string) => ({ id: one, title: known.get('question', one).ask });
  const own = question ? [{ id: question.id, title: question.ask }] : [];
  const unsure = [...signs].flatMap(([one, sign]) => (sign === 'either' ? [one] : []));
  const deciding = [...new Set([...unsure, ...askedBy(known, alike)])].slice(0, OFFERED).map(titleOf);
  const remedies = await askRepairs(known, alike, [...own, ...deciding], answers);
  const board = alike.flatMap((one) => known.get('defect', one).boards)[0];
  return {
    defect: { id, name, summary, often, families, alike, signs, question, remedies, board },
    mirrors,
  };
};
