/** What is said above a verdict that leaves a setting film alone sends no cloth to it. Common practice, no source. */
import { expect, it } from 'vitest';
import { nodesOf } from '#engine/index.ts';
import { known } from './knowledge.ts';

/** A hand on the film, where it is not forbidden, put off or told of what flows. */
const HANDS = /\b(wipe|wiped|dab|rub|blot)\b/i;
const PUT_OFF =
  /\b(?:while it is wet|once it is dry|not now|do not|does not|not even|on a dry finish|are wet and are)\b/i;

it('a film that sets is not both wiped and left alone', () => {
  const torn = known.defects.flatMap((defect) => {
    const says = defect['while-setting'] ?? defect['while-wet'];
    const wiped = says.split(/(?<=[.;:])\s/).some((part) => HANDS.test(part) && !PUT_OFF.test(part));
    const leaves = [...nodesOf(known, defect.id)].some(
      ({ stage, walked }) => stage === 'setting' && walked.kind === 'outcome' && walked.action.do === 'leave',
    );
    return wiped && leaves ? [`${defect.id}: ${says}`] : [];
  });
  expect(torn).toEqual([]);
});

it('surplus oil is wiped off while it is wet, whatever the cause', () => {
  const wet = [
    'sticky-oil',
    'frosted-oil',
    'blotchy-oil',
    'dry-patches-in-oil',
    'rough-after-oil',
    'wrinkled-oil',
  ].map((defect) =>
    [...nodesOf(known, defect)].flatMap(({ stage, walked }) =>
      stage === 'wet' && walked.kind === 'outcome' ? [walked.action.do] : [],
    ),
  );
  expect(new Set(wet.flat())).toEqual(new Set(['wipe-back']));
});

it('surplus wax is wiped off while it is wet, and no smear of it waits for a check that comes too late', () => {
  const wet = ['wax-smears', 'wax-will-not-buff', 'patchy-wax', 'prints-in-wax', 'sticky-wax'].map((defect) =>
    [...nodesOf(known, defect)].flatMap(({ stage, walked }) =>
      stage !== 'wet' ? [] : [walked.kind === 'outcome' ? walked.action.do : walked.kind],
    ),
  );
  expect(wet.map((doing) => [...new Set(doing)])).toEqual(wet.map(() => ['wipe-back']));
});
