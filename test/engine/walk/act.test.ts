/** The words of an act that several causes share: where they speak alike their own, else the general ones. Invented. */
import { expect, it } from 'vitest';
import { actionOf } from '#engine/walk/act.ts';
import { known } from '../small.ts';

const own = (say: string, again?: string) => ({
  do: 'wait' as const,
  say,
  not: `Not ${say}`,
  ...(again && { again }),
});

it('speaks for itself where all say the same', () => {
  expect(actionOf(known(), [own('Wait.', 'Look at noon.'), own('Wait.', 'Look at noon.')])).toEqual({
    do: 'wait',
    verdict: 'Verdict wait',
    say: 'Wait.',
    not: 'Not Wait.',
    again: 'Look at noon.',
  });
  expect(actionOf(known(), [own('Wait.')]).again).toBe('Look again later.');
});

it('has the order in large type of its own where all say the same, and the general one where they differ', () => {
  const buff = { ...own('Buff it.'), verdict: 'Buff it now' };
  expect(actionOf(known(), [buff, buff]).verdict).toBe('Buff it now');
  expect(actionOf(known(), [buff, own('Let it dry.')]).verdict).toBe('Verdict wait');
});

it('takes the general words for all of it where they differ', () => {
  expect(actionOf(known(), [own('Wait.', 'Look at noon.'), own('Let it dry.', 'Look at noon.')])).toEqual({
    do: 'wait',
    verdict: 'Verdict wait',
    say: 'General words for wait.',
    not: 'Not against wait.',
    again: 'Look again later.',
  });
});
