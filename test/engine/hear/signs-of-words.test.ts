/** Words that sound like a sign of a flaw, and those that are one. Sentences of our own. */
import { describe, expect, it } from 'vitest';
import { sign } from './hearing.ts';

describe.each<[string, string, readonly string[], readonly string[]]>([
  [
    'comes-off-in-flakes',
    'flakes that are bought are no flaking',
    [
      'shellac flakes in a jar',
      'the spirits and shellac flakes have been in a jar for a week',
      'blond flakes cut in alcohol, two coats on',
      'I dissolved the flakes and brushed it on',
      'flakes in a bag, never opened',
    ],
    [
      'the shellac flakes off when I bump it',
      'the varnish comes off in flakes',
      'flakes of lacquer all over the floor',
      'the shellac is flaking',
    ],
  ],
  [
    'set-before-the-end',
    'what was dry before was no coat that set too soon',
    ['the wood was dry before I brushed the varnish'],
    ['it dried before I could level it', 'the poly was drying too fast'],
  ],
])('%s: %s', (question, _, none, yes) => {
  it.each(none)('%s: none', (text) => expect(sign(text, question)).toBeUndefined());
  it.each(yes)('%s: yes', (text) => expect(sign(text, question)).toBe('yes'));
});
