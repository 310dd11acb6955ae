/** Where in a file a value stands, as someone would say it who counts from one. */
import { describe, expect, it } from 'vitest';
import { placeOf } from '#engine/faults/place.ts';
import { addressOf, readAddress } from '#engine/walk/nodes.ts';

describe('the place of a value', () => {
  it.each<[readonly PropertyKey[], string]>([
    [[], 'in this file'],
    [['name'], 'after "name:"'],
    [['steps', 7, 'grit'], 'after "grit:" in step 8'],
    [['steps', 0], 'in step 1'],
    [['claims', 1, 'source'], 'after "source:" in claim 2'],
    [['boards', 2, 'alt'], 'after "alt:" in board 3'],
    [['changes', 0, 'what'], 'after "what:" in change 1'],
    [['boards', 1, 'features', 0, 'kind'], 'after "kind:" in feature 1 of board 2'],
    [['boards', 1, 'features', 0], 'in feature 1 of board 2'],
    // One of a list of words stands behind the name of the list.
    [['also', 3], 'after "also:"'],
    [['steps', 2, 'does', 1], 'after "does:" in step 3'],
    [['now', 'wet', 'say'], 'after "say:" under "wet:"'],
    // A conversation nests, and yes and no tell nothing of where one is.
    [['tree', 'yes', 'no', 'remedy'], 'after "remedy:"'],
    [['tree', 'ask'], 'after "ask:"'],
    [['known', 0, 'when'], 'after "when:" in the first entry under "known:"'],
    [['known', 9, 'when'], 'after "when:" in the tenth entry under "known:"'],
    [['known', 10, 'when'], 'after "when:" in entry 11 under "known:"'],
    [['known', 0, 1, 'when'], 'after "when:" in the second entry of the first entry under "known:"'],
    [['known', 0, 1], 'in the second entry of the first entry under "known:"'],
    [[2, 'name'], 'after "name:" in the third entry'],
    [[4], 'in the fifth entry'],
  ])('%o: %s', (path, wanted) => {
    expect(placeOf(path)).toBe(wanted);
  });

  it.each(
    ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth'].map(
      (word, index) => [index, word] as const,
    ),
  )('%i is the %s', (index, word) => {
    expect(placeOf(['known', index, 'when'])).toContain(`the ${word} entry`);
  });
});

describe('the address of a stop in a tree', () => {
  it('is made of the stage and the answers in the order asked', () => {
    expect(addressOf(undefined, [])).toEqual(['cause']);
    expect(addressOf('wet', [])).toEqual(['stage-wet']);
    expect(addressOf('overdue', [['a', 'yes']])).toEqual(['stage-overdue', 'a-yes']);
    expect(
      addressOf(undefined, [
        ['a-b', 'no'],
        ['c', 'unsure'],
      ]),
    ).toEqual(['a-b-no', 'c-unsure']);
  });

  const questions = ['a', 'a-b', 'stage-x'];
  const read = (...segments: string[]) => readAddress({ has: (_, id) => questions.includes(id) }, segments);

  it('is read back, whatever it holds', () => {
    expect(read('stage-wet', 'a-b-no', 'a-unsure')).toEqual({
      stage: 'wet',
      answers: [
        ['a-b', 'no'],
        ['a', 'unsure'],
      ],
    });
    expect(read('cause')).toEqual({ stage: undefined, answers: [] });
    expect(read('stage-overdue')).toEqual({ stage: 'overdue', answers: [] });
  });

  it('loses what nobody knows any more', () => {
    expect(read('gone-yes', 'a-perhaps', 'a', 'stage-hot', 'xstage-wet', '')).toEqual({
      stage: undefined,
      answers: [],
    });
    expect(read('stage-x-yes')).toEqual({ stage: undefined, answers: [['stage-x', 'yes']] });
  });
});
