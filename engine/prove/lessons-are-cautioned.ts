import type { Truth } from '../case/condition.ts';
import type { Issue, Weight } from '../faults/issue.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import type { Hazard } from '../model/hazard.ts';
import type { Entry } from '../model/knowledge.ts';
import type { RuleEntry } from '../rules/rules.ts';
import { hazardsSaid } from './hazard-words.ts';
import { nearRules } from './near-rules.ts';
import { needed, weightOf } from './needs.ts';

type LessonEntry = Entry<'lesson'>;

/** A board that is new, or that she painted herself, has no older paint below. */
const HER_OWN = /\bnew\b|\blaid yourself\b/i;
const WATER_BORNE = /\bwater-based\b/i;

/** What the things that a lesson needs can do, as surely as their names tell. */
const THINGS: readonly (readonly [RegExp, readonly (readonly [Hazard, Truth])[]])[] = [
  [/\bP\d{3,4}\b/, [['dust', 'yes']]],
  [/\bblade\b/i, [['blade', 'yes']]],
  [
    /\boil-based\b|\bdrying oil\b|\boil stain\b/i,
    [
      ['oily-cloth', 'yes'],
      ['vapor', 'yes'],
    ],
  ],
  [
    /\bmineral spirits\b|\balcohol\b/i,
    [
      ['vapor', 'yes'],
      ['solvent-on-skin', 'yes'],
      ['waste', 'yes'],
    ],
  ],
  [/\bshellac\b/i, [['vapor', 'yes']]],
  [
    /\bwax\b/i,
    [
      ['vapor', 'yes'],
      ['oily-cloth', 'unknown'],
    ],
  ],
];

/** A can whose kind is not named may hold oil or spirits. */
const SOME_CAN = /^(?!.*\bdried\b).*\b(clear|top coats?|finish|stain|gloss)\b/i;
const LAYS = /\b(lay|coat|load|brush on|strain)\b/i;

const stronger = (one: Truth | undefined, other: Truth): Truth =>
  one === 'yes' || other === 'yes' ? 'yes' : other;

/** What a lesson's practice can do, by what it needs and by the words of its steps. */
export const hazardsOfLesson = ({ needs, practice }: LessonEntry): ReadonlyMap<Hazard, Truth> => {
  const found = new Map<Hazard, Truth>();
  const add = (hazard: Hazard, truth: Truth) => found.set(hazard, stronger(found.get(hazard), truth));
  for (const need of needs) {
    for (const [thing, does] of THINGS)
      if (thing.test(need)) for (const [hazard, truth] of does) add(hazard, truth);
    if (SOME_CAN.test(need) && !WATER_BORNE.test(need) && practice.some((step) => LAYS.test(step))) {
      add('vapor', 'unknown');
      add('oily-cloth', 'unknown');
    }
  }
  const isHers = needs.some((need) => HER_OWN.test(need));
  for (const step of practice)
    for (const hazard of hazardsSaid(step).keys()) if (hazard !== 'old-film' || !isHers) add(hazard, 'yes');
  if (!isHers && (found.has('dust') || found.has('blade'))) add('old-film', 'yes');
  return found;
};

const RANK: Readonly<Record<Weight, number>> = { note: 0, limit: 0, care: 1, stop: 2 };

/** The rules of a lesson that stand before its practice, stops first: those that guard what it does. */
export const rulesBefore = (known: Knowledge, lesson: LessonEntry): readonly RuleEntry[] => {
  const does = hazardsOfLesson(lesson);
  return lesson.rules
    .map((id) => known.get('rule', id))
    .filter(({ hazards }) => hazards.some((hazard) => does.has(hazard)))
    .sort((one, other) => RANK[weightOf(other)] - RANK[weightOf(one)]);
};

/** What each hazard of a lesson calls for and its rules do not give. */
export const lackedByLesson = (
  known: Knowledge,
  lesson: LessonEntry,
): readonly { readonly hazard: Hazard; readonly lacks: Weight }[] => {
  const rules = rulesBefore(known, lesson);
  return [...hazardsOfLesson(lesson)].flatMap(([hazard, truth]) =>
    needed(hazard, truth, () => false)
      .filter(
        (weight) =>
          !rules.some((rule) => rule.hazards.includes(hazard) && RANK[weightOf(rule)] >= RANK[weight]),
      )
      .map((lacks) => ({ hazard, lacks })),
  );
};

/** Every lesson whose practice can hurt someone names the rule that stands before it. */
export function* lessonsAreCautioned(known: Knowledge): Generator<Issue> {
  for (const lesson of known.lessons)
    for (const { hazard, lacks } of lackedByLesson(known, lesson)) {
      const named = known.rules.find(
        (rule) => rule.hazards.includes(hazard) && RANK[weightOf(rule)] >= RANK[lacks],
      );
      yield {
        file: lesson.file,
        line: lesson.lineOf(['rules']),
        code: 'no-caution',
        of: 'lesson',
        step: lesson.title,
        hazard,
        lacks,
        in: 'any case',
        rule: named && { id: named.id, only: '' },
        like: nearRules(known.rules, hazard, lacks).like,
      };
    }
}
