/**
 * A time that has gone by since the coat was laid, a word of dryness that is of no film, and what was laid after what: word
 * by word, in pairs of sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import { isBegunAnew, isStill, laidAfter, laidNext } from '#engine/hear/coat-story.ts';
import { earned } from '#engine/hear/earned.ts';
import { isElapsed } from '#engine/hear/elapsed.ts';
import type { Manner } from '#engine/hear/manner.ts';
import type { Match } from '#engine/hear/match.ts';
import { isHowItIsDone, isInCan, isNotYetDry, isOfThen } from '#engine/hear/not-dry.ts';
import { isLaid, isOfBelow, placeOf } from '#engine/hear/place.ts';
import {
  isAfterTop,
  isAlone,
  isDrying,
  isOfDrying,
  isOfLaying,
  laysBeside,
  namesFilm,
} from '#engine/hear/time-words.ts';
import { marked } from './marked.ts';

/** Words before a time that hedge it, the commonest. */
const HEDGES = ['about', 'almost', 'the', 'only', 'over', 'at', 'a'];
const matchOf = ({ from, to }: { from: number; to: number }, more: Partial<Match> = {}): Match => ({
  sense: '',
  kind: '',
  of: [],
  from,
  to,
  size: to - from,
  ...more,
});
const plain: Manner = {
  denied: () => undefined,
  notYet: () => false,
  feared: () => false,
  over: () => false,
};

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

const dry = (is: (words: ReturnType<typeof marked>['words'], match: Match) => boolean) => (text: string) => {
  const { words, from, to } = marked(text);
  return is(words, matchOf({ from, to }));
};

describe('a word of dryness', () => {
  const notYet = dry(isNotYetDry);
  it.each([
    'until it is [dry]',
    'before it is [dry]',
    'should be [dry]',
    'it will be [hard]',
    'if it is [dry]',
    'the can says [dry]',
    'let it get [dry]',
    'I thought it was [dry]',
    'how [dry] is it',
    'it must be [dry]',
    'it needs to be [hard]',
    'it is [fully cured], or so I thought',
    'it is [hard], I guess',
    'the room [dry]',
    'my brush [dry]',
    '[dry] spots in it',
    '[dry] patch',
    '[dry] wood',
    'it is [hard] to see',
    '[hard] wax',
    '[hard] edges',
    '[hard] water',
    'is it [dry]?',
    'are they [hard] now?',
    '[is it dry] now?',
    'I [dried] the brush',
    'I [dried] it',
    'he [dried] my tools',
    'it has to [dry]',
    'washed with spirits, [dried]',
    'rinsed, [dried], then coated',
  ])('is of no film that is dry: %s', (text) => {
    expect(notYet(text)).toBe(true);
  });
  it.each([
    'it is [dry]',
    'the poly is [hard]',
    'it is [fully cured]',
    'until then it was wet, because it is [dry]',
    'it is [dry] now. If only',
    'the poly, [dry] on top',
    'it [dried] the whole night',
    'it [dried] the first day',
    'it [dried] hard',
    'it is [cured] to look at',
    'it is [hard]. To me',
    'coated, [dried]',
    'it is [hard] as nails',
    'they are [dry]. Thought so',
  ])('is of one: %s', (text) => {
    expect(notYet(text)).toBe(false);
  });

  const how = dry(isHowItIsDone);
  it.each([
    'I [dry] sanded it',
    'a [wet] sanding',
    '[dry] sand it',
    '[wet] sandpaper',
    'it [dried] quickly',
    'it [dried] so fast',
    'it [dries] too slow',
    'it [dried] very quickly',
    'it [dried] within a day',
  ])('of how it is done: %s', (text) => {
    expect(how(text)).toBe(true);
  });
  it.each([
    'it is [dry], sand it',
    'it is [wet] now',
    'it [dried] so I sanded',
    'it [dried] hard',
    'it is [hard] fast',
    'it [dried]',
    'it [dried] very hard',
  ])('and not: %s', (text) => {
    expect(how(text)).toBe(false);
  });

  const then = dry(isOfThen);
  it.each([
    'while it was [tacky]',
    'when it was still [wet]',
    'before they were [dry]',
    'a cloth that is [wet]',
    'my hands are [wet]',
    'the grass is [wet]',
  ])('of how it was then: %s', (text) => {
    expect(then(text)).toBe(true);
  });
  it.each([
    'while it is [tacky]',
    'it was [tacky]',
    'when I press, it was [tacky]',
    'a cloth that is [sticky]',
    'the poly is [wet]',
    'it was so when it is [tacky]',
  ])('and of now: %s', (text) => {
    expect(then(text)).toBe(false);
  });

  const inCan = dry(isInCan);
  it.each(['the can of poly is [sticky]', 'in the jar it is [thick]', 'two tins are [hard]'])(
    'of a can: %s',
    (text) => {
      expect(inCan(text)).toBe(true);
    },
  );
  it.each(['the can, it is [sticky]', 'I can tell it is [sticky]', 'it is [sticky] in the can'])(
    'and of a film: %s',
    (text) => {
      expect(inCan(text)).toBe(false);
    },
  );
});

describe('the next coat of the story', () => {
  const anew = (text: string) => {
    const { words, from } = marked(text);
    return isBegunAnew(words, from);
  };
  it.each([
    'I [stripped] it, two coats of oil',
    'he [redid] it and brushed it',
    'back to [bare] wood, two coats',
    'sanded it [off], two coats',
    'took everything [off] and waxed it',
    'started [over], two coats',
  ])('all before was taken off: %s', (text) => {
    expect(anew(text)).toBe(true);
  });
  it.each([
    'I [stripped] it',
    'two coats, then [stripped]',
    'on [bare] wood, two coats',
    'wiped [off], two coats',
    'dust came [off], two coats',
    'went [over], two coats',
    'I [sanded] it, two coats',
  ])('and not: %s', (text) => {
    expect(anew(text)).toBe(false);
  });

  const after = (text: string, manner = plain) => {
    const { words, to } = marked(text);
    const found = laidAfter(words, manner, words[to]?.from ?? 1e6);
    return found && words.find(({ from }) => from === found.from)?.word;
  };
  it('is told by a word of laying in a new clause, by "then", or by what goes on top', () => {
    expect(after('it was [two days], so brushed again')).toBe('brushed');
    expect(after('[two days] ago. Sprayed it')).toBe('sprayed');
    expect(after('[two days], then two coats of clear')).toBe('then');
    expect(after('[two days] then the poly went on')).toBe('then');
    expect(after('[two days], wax on top')).toBe('wax');
    expect(after('[two days], poly on')).toBe('poly');
    expect(after('[two days] a second coat')).toBe('a');
    expect(after('[two days]. I stripped it. Two coats')).toBe('stripped');
  });
  it('is none where nothing new is told', () => {
    for (const text of [
      '[two days] ago',
      '[two days] then I slept',
      '[two days], wax on it',
      '[two days], dust on top',
      'it was [two days] of brushed wood',
      '[two days] a second look',
      '[two days] it was a good coat',
      '[two days]. It is dull',
    ])
      expect(after(text)).toBeUndefined();
    expect(after('[two days]. Sprayed it', { ...plain, notYet: () => true })).toBeUndefined();
  });

  const next = (text: string) => {
    const { words, to } = marked(text);
    return laidNext(words, words[to]?.from ?? 1e6);
  };
  it.each([
    'waited [two days] and brushed it',
    '[two days] then I sprayed',
    '[two days] and put on a coat',
    'after [two days] then we laid it',
  ])('was laid in the clause of the time: %s', (text) => {
    expect(next(text)).toBe(true);
  });
  it.each([
    'waited [two days] and put it away',
    '[two days] it was brushed',
    '[two days]. And brushed it',
    'brushed it and waited [two days]',
    '[two days] and looked',
  ])('and not: %s', (text) => {
    expect(next(text)).toBe(false);
  });

  const still = (text: string) => {
    const { words, from, to } = marked(text);
    return isStill(words, words[from]?.from ?? 0, words[to - 1]?.to ?? 0);
  };
  it('what is still so is told of now', () => {
    for (const text of [
      '[five days] and still tacky',
      'still [five days] on',
      'it is now [five days]',
      '[five days] it has now',
    ])
      expect(still(text)).toBe(true);
    for (const text of [
      '[five days] and tacky',
      'it is so and still, because [five days]',
      '[five days]. Still tacky',
      '[five days] of this and that and they are still here',
    ])
      expect(still(text)).toBe(false);
  });
});

describe('where a kind of finish lies', () => {
  const ear = { below: new Set(['over', 'old', 'under']), onTop: new Set(['with', 'top']) } as never;
  const place = (text: string) => {
    const { words, from, to } = marked(text);
    return placeOf(ear, words, matchOf({ from, to }));
  };
  it.each([
    ['over [shellac]', 'below'],
    ['over the old [shellac]', 'below'],
    ['over all that [shellac]', 'below'],
    ['over it all that [shellac]', undefined],
    ['over it, [shellac]', undefined],
    ['over primer and [lacquer]', undefined],
    ['over the table with [shellac]', undefined],
    ['covered with [shellac]', 'top'],
    ['primed with [shellac]', 'top'],
    ['sealed with [shellac]', 'top'],
    ['done with [shellac]', undefined],
    ['a 20 year old [oil] chest', undefined],
    ['an old [oil] chest', 'below'],
    ['[shellac] underneath', 'below'],
    ['[shellac] first', 'below'],
    ['[shellac] primer', 'below'],
    ['[oil] under the seat', undefined],
    ['[shellac], first', undefined],
    ['[shellac] over it', 'top'],
    ['[shellac] topcoat', 'top'],
    ['[shellac] on it', 'top'],
    ['[shellac] it is', undefined],
  ] as const)('%s: %s', (text, wanted) => {
    expect(place(text)).toBe(wanted);
  });
  it.each(['[oil] stain', '[shellac] primer', '[oil] paint', '[lacquer] thinner', '[oil] enamel'])(
    '%s is no finish',
    (text) => {
      const { words, from, to } = marked(text);
      expect(isOfBelow(words, matchOf({ from, to }))).toBe(true);
    },
  );
  it.each(['[oil], stain', '[oil] finish', '[oil]'])('%s is one', (text) => {
    const { words, from, to } = marked(text);
    expect(isOfBelow(words, matchOf({ from, to }))).toBe(false);
  });
  it('is told as laid by words before it and right behind it', () => {
    const laid = (text: string) => {
      const { words, from, to } = marked(text);
      return isLaid(words, matchOf({ from, to }));
    };
    for (const text of [
      'two coats of [oil]',
      '3 of [oil]',
      'brushed some [oil]',
      'I put more of the good [oil]',
      'then [oil]',
      '[oil] went on',
      '[oil] on it',
      '[oil] last night',
      '[oil] it yesterday',
    ])
      expect(laid(text)).toBe(true);
    for (const text of [
      'the [oil]',
      'brushed, [oil]',
      'brushed it all day long with more of [oil]',
      '[oil], on it',
      '[oil] it is on',
      'a can of [oil]',
    ])
      expect(laid(text)).toBe(false);
  });
});

describe('what stands around a time', () => {
  const at =
    <T>(is: (words: ReturnType<typeof marked>['words'], from: number, to: number) => T) =>
    (text: string) => {
      const { words, from, to } = marked(text);
      return is(words, from, to);
    };
  it('alone', () => {
    const alone = at(isAlone);
    for (const text of [
      '[five days]',
      'its been [two weeks] now',
      'only [five days], it dents',
      'so far [two days]',
      'waiting [two days] total',
    ])
      expect(alone(text)).toBe(true);
    for (const text of [
      '[five days] of sun',
      'saw it [five days]',
      '[five days] dull',
      'table, [five days] there, dull',
    ])
      expect(alone(text)).toBe(false);
  });
  it('a film, named in the same sentence', () => {
    const film = at(namesFilm);
    for (const text of ['the poly is [two days] old', '[two days] on the varnish', 'lacquer, [a day]'])
      expect(film(text)).toBe(true);
    for (const text of [
      'the poly. It is [two days] old',
      'poly that I got for my own old big desk is [two days] old',
      'the table is [two days] old',
    ])
      expect(film(text)).toBe(false);
  });
  it('drying', () => {
    expect(at(isDrying)('it has been drying [two days]')).toBe(true);
    expect(at(isDrying)('curing for [two days]')).toBe(true);
    expect(at(isDrying)('drying, [two days]')).toBe(false);
    expect(at(isDrying)('drying in all that sun [two days]')).toBe(false);
    for (const text of [
      'dried [two days]',
      'waited [two days]',
      '[two days] to cure',
      '[two days] it was drying',
    ])
      expect(at(isOfDrying)(text)).toBe(true);
    for (const text of ['dried, [two days]', '[two days], dry', 'it dried out there by itself [two days]'])
      expect(at(isOfDrying)(text)).toBe(false);
  });
  it('the coat that it comes after', () => {
    const top = at((words, _, to) => isAfterTop(words, to));
    for (const text of [
      '[two days] after the wax it got rough',
      '[two days] after my last poly',
      '[two days] since lacquer',
    ])
      expect(top(text)).toBe(true);
    for (const text of [
      '[two days] after the oil I brushed on poly',
      '[two days] after lunch',
      '[two days] after it, the wax',
      '[two days] after that one last wax',
    ])
      expect(top(text)).toBe(false);
  });
  it('laying, in its clause or between its commas', () => {
    expect(at(isOfLaying)('I brushed it [two days] ago')).toBe(true);
    expect(at(isOfLaying)('I brushed it, [two days] ago')).toBe(true);
    expect(at(isOfLaying)('I brushed it. [Two days] ago')).toBe(false);
    expect(at(isOfLaying)('the brush, [two days] ago')).toBe(false);
    for (const text of ['the coat [two days] ago', 'I sprayed [two days] ago', '[two days] ago a layer'])
      expect(at(laysBeside)(text)).toBe(true);
    for (const text of [
      'the coat, [two days] ago',
      'bubbles in my coat [two days] ago',
      'dust on the coat [two days] ago',
      'saw it [two days] ago',
    ])
      expect(at(laysBeside)(text)).toBe(false);
  });
});

describe('a time is that of the coat where it is earned', () => {
  const sure = (
    text: string,
    more: object = {},
    manner = plain,
    kinds: readonly Partial<Match>[] = [],
  ): number => {
    const { words, from, to } = marked(text);
    const time = {
      from: words[from]?.from ?? 0,
      to: words[to - 1]?.to ?? 0,
      least: 40,
      likely: 48,
      most: 60,
      sure: 0.8,
      laid: false,
      ...more,
    };
    return earned(
      words,
      kinds.map((one) => matchOf({ from, to }, one)),
      manner,
      time,
    ).sure;
  };
  it.each([
    ['went to bed [two days]', {}],
    ['[a day] later I began the second coat', { near: true }],
    ['let it haze [20 minutes] and buffed it', { near: true }],
    ['[24 hours], sanded, waxed', { near: true }],
    ['[four weeks ago] the pipe burst', { now: true }],
    ['a glass fell [just now]', { now: true }],
    ['over the last [three months] 60 poly boards', {}],
    ['used it on boards for [three months]', { near: true }],
    ['sanded the thing for [hours]', { near: true }],
    ['[the day before] I leave, poly', {}],
    ['my [4 year] old table', { near: true }],
    ['I would scuff that poly in [two days]', {}],
  ])('doubted: %s', (text, more) => {
    expect(sure(text, more)).toBeLessThan(0.7);
  });
  it.each([
    ['the poly went on [two days]', {}],
    ['it was on [two days]', {}],
    ['waited [two days]', {}],
    ['[two days] on, it is dull', {}],
    ['[a day] later I saw the second coat', { near: true }],
    ['the day after I laid the second coat, [a day]', { near: true }],
    ['[24 hours] and it is still dull, sanded, waxed', { near: true }],
    ['[four weeks ago] the poly', { now: true }],
    ['it came [two days ago]', { now: true }],
    ['I bought it [two years ago]', { now: true, least: 9000 }],
    ['during the last [three months] it was laid', { laid: true }],
    ['used poly for [three months]', {}],
    ['sanded the dry thing for [hours]', { near: true }],
    ['[the day before] I brushed poly', {}],
    ['its [4 years] old', { near: true }],
    ['my [4 year] old poly', {}],
    ['I would say that poly is on [two days]', {}],
  ])('taken as it is: %s', (text, more) => {
    expect(sure(text, more)).toBe(0.8);
  });
  it('what is seen, or how dry it is, ties a loose time to the film', () => {
    const loose = 'went to bed [two days]';
    for (const kind of [
      { kind: 'sign' },
      { kind: 'fact', of: ['stage', 'setting'] },
      { kind: 'fact', of: ['overdue', 'yes'] },
    ])
      expect(sure(loose, {}, plain, [kind])).toBe(0.8);
    for (const kind of [{ kind: 'fact', of: ['piece', 'crib'] }, { kind: 'cue' }])
      expect(sure(loose, {}, plain, [kind])).toBeLessThan(0.7);
    for (const more of [{ now: true }, { laid: true }, { near: true }]) expect(sure(loose, more)).toBe(0.8);
  });
  it('what was only planned or asked was not laid since', () => {
    const text = '[a day] later I began the second coat';
    expect(sure(text, { near: true }, { ...plain, notYet: () => true })).toBe(0.8);
    expect(sure(text, { near: true }, { ...plain, feared: () => true })).toBe(0.8);
    expect(sure(text, { near: true }, { ...plain, denied: () => 0 })).toBe(0.8);
    expect(sure('[24 hours], sanded, waxed', { near: true }, { ...plain, notYet: () => true })).toBe(0.8);
  });
  it('never makes a time surer', () => {
    expect(sure('went to bed [two days]', { sure: 0.3 })).toBe(0.3);
  });
});
