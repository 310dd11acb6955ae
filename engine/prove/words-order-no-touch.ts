import type { Issue } from '../faults/issue.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import { visits } from '../knowledge/tree.ts';
import type { Entry } from '../model/knowledge.ts';
import type { Doing } from '../model/remedy.ts';
import type { Stage } from '../model/stage.ts';
import { familiesOf, isWiped } from './actions-fit-the-stage.ts';
import { bornBy, touchAgain, touchOrdered } from './touch-words.ts';

/** What is done by leaving the film alone: no word of such an act may send a hand to it. */
const HANDS_OFF: readonly Doing[] = ['leave', 'wait', 'accept', 'stop'];
/** The verdicts that leave a film alone, and that of causes which ask for different hands. */
const HANDS_OFF_WORDS: readonly string[] = ['leave', 'wait', 'unsure'];
/** The stages at which a film marks, with the one that a film which never dried is at. */
const SOFT: readonly (readonly [place: Stage | 'overdue', stage: Stage])[] = [
  ['wet', 'wet'],
  ['setting', 'setting'],
  ['dry-to-touch', 'dry-to-touch'],
  ['overdue', 'dry-to-touch'],
];

/** What is said in an act, by field. */
type Said = {
  readonly verdict?: string | undefined;
  readonly say?: string | undefined;
  readonly not?: string | undefined;
  readonly again?: string | undefined;
};

/** Every order of a touch in what is said where hands are off, with the field that gives it. */
export function* touchesIn(
  said: Said,
  born: readonly string[],
): Generator<{ readonly field: keyof Said; readonly order: string }> {
  for (const field of ['verdict', 'say', 'not', 'again'] as const) {
    const text = said[field];
    const order = text && (field === 'again' ? touchAgain : touchOrdered)(text, born);
    if (order) yield { field, order };
  }
}

/** Whether an act leaves the film alone. */
export const isHandsOff = (doing: Doing): boolean => HANDS_OFF.includes(doing);

function* inRemedies(known: Knowledge): Generator<Issue> {
  const families = familiesOf(known);
  for (const remedy of known.remedies) {
    const wiped = isWiped(families.get(remedy.id));
    for (const [place, stage] of SOFT) {
      const act = remedy.now[place];
      if (!act || !isHandsOff(act.do)) continue;
      for (const { field, order } of touchesIn(act, bornBy(stage, wiped)))
        yield {
          file: remedy.file,
          line: remedy.lineOf(['now', place, field]),
          code: 'touch-ordered',
          order,
          where: `where "do: ${act.do}" leaves it alone (${place})`,
          becomes: field === 'not' ? 'not' : 'steps',
        };
    }
  }
}

function* inDefect(defect: Entry<'defect'>): Generator<Issue> {
  // Read before a stage is told, so it must be right for a film that sets; open oil and wax are wiped all the same.
  const wiped = isWiped(new Set(defect.families));
  for (const [field, stage, where] of [
    ['while-wet', 'wet', 'while it is wet or setting'],
    ['while-setting', 'setting', 'while it sets'],
  ] as const) {
    const order = touchOrdered(defect[field] ?? '', bornBy(stage, wiped));
    if (order)
      yield {
        file: defect.file,
        line: defect.lineOf([field]),
        code: 'touch-ordered',
        order,
        where,
        becomes: 'remedy',
      };
  }
  for (const { branch, path } of visits(defect.tree)) {
    const order = 'leave' in branch ? touchOrdered(branch.leave) : undefined;
    if (order)
      yield {
        file: defect.file,
        line: defect.lineOf(['tree', ...path, 'leave']),
        code: 'touch-ordered',
        order,
        where: 'after "leave:", where it is left alone',
        becomes: 'leave',
      };
  }
}

/** Where the verdict is hands off, no sentence below it orders a touch. */
export function* wordsOrderNoTouch(known: Knowledge): Generator<Issue> {
  yield* inRemedies(known);
  for (const defect of known.defects) yield* inDefect(defect);
  for (const doing of known.doings) {
    if (!HANDS_OFF_WORDS.includes(doing.id)) continue;
    for (const { field, order } of touchesIn(doing, []))
      yield {
        file: doing.file,
        line: doing.lineOf([field]),
        code: 'touch-ordered',
        order,
        where: `under the verdict "${doing.verdict}"`,
        becomes: field === 'not' ? 'not' : 'remedy',
      };
  }
}
