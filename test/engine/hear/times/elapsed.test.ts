/**
 * A time that has gone by since the coat was laid, word by word, in pairs of sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import { isElapsed } from '#engine/hear/times/elapsed.ts';
import { marked } from '../marked.ts';

/** Words before a time that hedge it, the commonest. */
const HEDGES = ['about', 'almost', 'the', 'only', 'over', 'at', 'a'];

describe.each<[what: string, gone: readonly string[], open: readonly string[]]>([
  [
    'time within it',
    [
      '[45 minutes] in and I see a run',
      '[one week] in',
      '[a week] in, I see it',
      '[two days] in now',
      '[two days] in the poly sags',
    ],
    ['[45 minutes] in a pot', '[one week] and in', '[a week] into it', '[two days] in June'],
  ],
  [
    'been',
    ['it has been [5 days]', 'been about [5 days]', 'it had been over [an hour]'],
    [
      'I have been [5 days]',
      'ive been [5 days]',
      'we been [5 days]',
      'it is [5 days]',
      'he had been [5 days]',
    ],
  ],
  [
    'gone by',
    [
      '[an hour] has gone by',
      '[three days] have passed',
      '[three days] elapsed',
      '[two days] went by',
      '[two days] have gone by',
    ],
    ['[an hour] gone', '[three days] stand by', '[three days] went on', '[three days]. It passed'],
  ],
  [
    'since laying',
    [
      '[2 hours] since the last coat',
      '[six days] since I sprayed',
      '[12 hours] after brushing',
      '[a day] past the poly',
      '[a day] from waxing',
      '[a day] after I laid it',
    ],
    [
      '[2 hours] since the call',
      '[six days] since I saw it',
      '[12 hours] before brushing',
      '[a day] after. The coat',
      '[a day] after lunch, the poly',
      '[a day] beside the poly',
    ],
  ],
  [
    'age of the coat',
    [
      'the poly is [nine days] old',
      'a coat [nine days] old',
      'its about [an hour] old',
      'that one is [an hour] old',
      'thats [two days] old',
    ],
    ['the table, [nine days] old', 'my son has [two days] old', 'the poly is [nine days] on. It is old'],
  ],
  [
    'what it has had',
    [
      'it has been on [2 hrs]',
      'its on [2 hrs]',
      'the clear has had [two hours]',
      'that had [three days]',
      'a coat had [three days]',
      'its got [a day]',
      'it has got about [a day]',
      'has been drying [a day]',
      'it dried [a day]',
      'its sat [a day]',
    ],
    ['turned on [2 hrs]', 'I had [two hours]', 'he got [a day]', 'wood drying [a day]', 'it hung on [2 hrs]'],
  ],
  [
    'a mark that is reached',
    ['past the [48 hour] mark', 'the [ten day] mark'],
    ['a [48 hour] job', 'a [ten day]. Mark it'],
  ],
  [
    'back then',
    ['that was [ten days] back', 'it was [two days] ago', 'thats [two days] ago', 'its about [two days] ago'],
    ['I saw it [two days] ago', 'that was [ten days] here', 'the call [two days] back'],
  ],
  [
    'still so',
    [
      'after [nine days] it still dents',
      '[3 days]. Still tacky',
      'for [nine days] nothing',
      '[three days] and no change',
      'its [nine days] and not yet',
      'so, [nine days] and no luck',
    ],
    [
      'call [nine days] it still dents',
      '[nine days] and it dents',
      '[three days] and no time',
      '[3 days]. It is. Still tacky',
      '[nine days] and they all said it was quite still',
    ],
  ],
])('a time told by %s', (_, gone, open) => {
  const elapsed = (text: string): boolean => {
    const { words, from, to } = marked(text);
    let back = from - 1;
    while (words[back]?.part === words[from]?.part && HEDGES.includes(words[back]?.word ?? '')) back--;
    return isElapsed(words, from, to, back);
  };
  it.each(gone)('has gone by: %s', (text) => {
    expect(elapsed(text)).toBe(true);
  });
  it.each(open)('need not: %s', (text) => {
    expect(elapsed(text)).toBe(false);
  });
});
