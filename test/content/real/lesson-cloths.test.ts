/** A practice that leaves oily cloths says where they go on the day they were wet, and puts flames out before a can is opened. */
import { expect, it } from 'vitest';
import { hazardsOfLesson } from '#engine/prove/lessons-are-cautioned.ts';
import { known } from './knowledge.ts';

const CLOTHS = /\b(cloths?|papers?)\b[^.]*\b(flat|outdoors)\b|\bflat and single\b/i;
const NEXT_DAY = /\b(next day|tomorrow|overnight|24 hours|72 hours|two days|three days)\b/i;
const FLAME = /\b(flame|door|window)\b/i;
const OPENS = /\b(lay|coat|brush on|wax the|pour|load)\b/i;

/** What stands amiss in the order of a practice. */
const amissIn = (practice: readonly string[]): readonly string[] => {
  const first = (words: RegExp) => practice.findIndex((step) => words.test(step));
  const [cloths, later, flame, opens] = [first(CLOTHS), first(NEXT_DAY), first(FLAME), first(OPENS)];
  return [
    ...(cloths < 0 || (later >= 0 && cloths > later) ? ['cloths lie over to the next day'] : []),
    ...(flame < 0 || (opens >= 0 && flame > opens) ? ['flames burn when the can is opened'] : []),
  ];
};

const oily = known.lessons.filter((lesson) => {
  const does = hazardsOfLesson(lesson);
  return does.get('oily-cloth') === 'yes' && does.get('vapor') === 'yes';
});

it('is looked at in the lessons that leave oily cloths', () => {
  expect(oily.map(({ id }) => id as string)).toEqual(
    expect.arrayContaining(['how-films-dry', 'what-lies-below']),
  );
});

it.each(
  [...oily, known.get('lesson', 'wax-and-buff'), known.get('lesson', 'test-patch')].map(
    (one) => [one.id, one.practice] as const,
  ),
)('%s puts flames out first and cloths out the same day', (_id, practice) => {
  expect(amissIn(practice)).toEqual([]);
  expect(amissIn([...practice].reverse())).not.toEqual([]);
});
