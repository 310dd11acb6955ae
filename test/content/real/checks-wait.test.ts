/** While a stop stands that says so, nothing is asked that brings a hand, an eye or a nose close to the piece. */
import { describe, expect, it } from 'vitest';
import { consider, hear, mindOf } from '#engine/hear.ts';
import { readHearing } from '../../../content/tools/hear.ts';
import { known } from './knowledge.ts';

const mind = mindOf(known);
const hearing = readHearing(known, process.cwd());
const checksOf = (rule: string) => known.get('rule', rule).checks;

/** Every question that is asked one after the other, each answered alike, with the rules that stand. */
const askedOf = (text: string, answer: 'yes' | 'no' | 'unsure') => {
  const told: Record<string, string> = { stage: 'cured', age: 'unknown' };
  const asked: string[] = [];
  for (;;) {
    const { next, warnings } = consider(mind, { told, heard: hear(hearing, text) });
    if (next?.kind !== 'question') return { asked, warnings };
    asked.push(next.question);
    told[next.question] = answer;
  }
};

it('mold lets nothing be looked at closely, touched, smelled or tried; worth nothing be touched or tried', () => {
  expect(
    checksOf('mold')
      .flatMap(({ by, wait }) => (wait ? by : []))
      .sort(),
  ).toEqual(['look', 'probe', 'smell', 'touch'].sort());
  expect(
    checksOf('valuable-piece')
      .flatMap(({ by, wait }) => (wait ? by : []))
      .sort(),
  ).toEqual(['probe', 'touch']);
  expect(
    checksOf('lead-before-sanding')
      .map(({ say }) => say)
      .join(),
  ).toMatch(/wash your hands/);
});

// Invented, in the style of what people write.
describe.each([
  ['My chest stood in a damp shed and is covered in green mold, is it lost', 'mold'],
  ['hand painted chest from around 1800, the paint is dull and has spots', 'valuable-piece'],
])('"%s"', (text, rule) => {
  it.each(['yes', 'no', 'unsure'] as const)(
    'asks for no check that waits, whatever is answered (%s)',
    (answer) => {
      const { asked, warnings } = askedOf(text, answer);
      expect(warnings.map(({ id }) => id)).toContain(rule);
      const waits = checksOf(rule).flatMap(({ by, wait }) => (wait ? by : []));
      expect(asked.filter((id) => waits.includes(known.get('question', id).by))).toEqual([]);
    },
  );
});

it('asks nothing at all of a moldy piece but how dry it is and how old', () => {
  expect(
    askedOf('My chest stood in a damp shed and is covered in green mold, is it lost', 'no').asked,
  ).toEqual([]);
});

it('takes a grit for no year', () => {
  const { warnings } = consider(mind, {
    told: {},
    heard: hear(hearing, 'wet sanded from 600 to 1800 grit, now dull'),
  });
  expect(warnings.map(({ id }) => id)).not.toContain('valuable-piece');
});
