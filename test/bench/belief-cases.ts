/** What people may have told before the next question: facts, and two answers that fit a flaw. The same at each run. */
import type { Mind, ToldFacts } from '#engine/hear.ts';
import { YES } from '#engine/see/matrix.ts';
import { chanceFrom } from './chance.ts';

const ANSWERED = 2;

export const beliefCases = (mind: Mind, count: number): readonly ToldFacts[] => {
  const { pick } = chanceFrom(20_261_129);
  return Array.from({ length: count }, () => {
    const flaw = pick([...mind.matrix.defects.keys()]);
    const told: Record<string, string | number> = { stage: 'cured' };
    const family = pick(mind.families[flaw] ?? []);
    if (family) told['family'] = family;
    // Signs that are surely shown, as she would tell them first.
    const shown = mind.matrix.questions.filter((_, at) => mind.matrix.signs[at]?.[flaw] === String(YES));
    for (let answered = 0; answered < ANSWERED && shown.length; answered++) told[pick(shown)] = 'yes';
    return told;
  });
};
