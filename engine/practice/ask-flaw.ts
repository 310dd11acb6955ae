import { stageOf } from '../case/answers.ts';
import type { Case } from '../case/case.ts';
import type { Doing } from '../model/remedy.ts';
import { lower } from '../plain/text.ts';
import { actOf } from '../walk/act.ts';
import { possible } from '../walk/leaves.ts';
import type { Chance } from './chance.ts';
import type { PracticeAsk, PracticeChoice } from './item.ts';
import type { PracticeFlaw, PracticeKnowledge } from './knowledge.ts';
import type { Rival, Rivals } from './rivals.ts';

/** What is seen comes first, then the question that it answers, then what the other flaw would show. */
export const saidBySign = (
  { ask, here, there }: { readonly ask: string; readonly here: string; readonly there: string },
  answer: 'yes' | 'no',
  other: string,
): string =>
  `${here} “${ask}” ${answer === 'yes' ? 'Yes' : 'No'}. With “${other}” it is ${answer === 'yes' ? 'no' : 'yes'}: ${lower(there)}`;

const signSaid = (known: PracticeKnowledge, { sign, flaw }: Rival): string => {
  const { ask, [sign.a]: here, [sign.b]: there } = known.get('question', sign.question);
  return saidBySign({ ask, here, there }, sign.a, flaw.name);
};

/** What hands would have done, had they taken it for another flaw. */
const mistaken = (
  known: PracticeKnowledge,
  on: Case,
  flaw: PracticeFlaw,
  right: Doing | undefined,
): string => {
  const stage = stageOf(on);
  if (!stage || !right) return '';
  const acts = possible(known, on, flaw.id).leaves.map((leaf) => actOf(known, on, leaf, stage));
  const [first] = acts;
  if (!first || !acts.every((act) => act.do === first.do)) return '';
  return first.do === right
    ? ' For now your hands would do the same.'
    : ` Taken for it, you would have done this: ${first.say}`;
};

/** What it is: the flaw among its rivals, each with the sign that rules it out. */
export const askFlaw = (
  known: PracticeKnowledge,
  on: Case,
  flaw: PracticeFlaw,
  rivals: Rivals,
  right: Doing | undefined,
  chance: Chance,
): PracticeAsk => {
  const [nearest] = rivals;
  return {
    kind: 'flaw',
    ask: 'What is it?',
    choices: chance.mixed<PracticeChoice>([
      {
        id: flaw.id,
        says: flaw.name,
        right: true,
        because: signSaid(known, nearest),
      },
      ...rivals.map((rival) => ({
        id: rival.flaw.id,
        says: rival.flaw.name,
        right: false,
        because: signSaid(known, rival) + mistaken(known, on, rival.flaw, right),
      })),
    ]),
  };
};
