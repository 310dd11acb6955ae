/**
 * Sentences that send a hand to a film, and such that do not, as anyone reads them. Of our own; the verbs are those of the
 * trade's handwork (common practice, no source).
 */
import { describe, expect, it } from 'vitest';
import { bornBy, touchAgain, touchOrdered } from '#engine/prove/touch-words.ts';

describe('orders of a touch', () => {
  it.each(
    (
      'abrade absorb bend blot blow brush buff burnish chip comb crush dab dig drag ease fan feather fill flatten fold ' +
      'grind hook knock level lift mash massage mop nick nudge pat peel pick pierce pinch pluck poke press prick prise prod ' +
      'pry pull push rake recoat roll rub sand scour scrape scratch scrub scuff shave skim slice slide smooth soak spread ' +
      'squash squeeze straighten strip stroke swab sweep tack tamp tease thumb tidy touch trim tuck tweeze vacuum wash ' +
      'wick wipe'
    ).split(' '),
  )('%s it', (verb) => {
    expect(touchOrdered(`${verb[0]?.toUpperCase()}${verb.slice(1)} the edge`)).toBeDefined();
    expect(touchOrdered(`Do not ${verb} the edge`)).toBeUndefined();
    expect(touchOrdered(`Never ${verb} the edge`)).toBeUndefined();
  });

  it.each(
    'clean coat cut dust file fish hold lay pad paint plane polish pop run spray tap thin tip wet work'.split(
      ' ',
    ),
  )('%s is an order where something is named', (verb) => {
    expect(touchOrdered(`${verb} it`)).toBeDefined();
    expect(touchOrdered(`${verb} the edge`)).toBeDefined();
    expect(touchOrdered(`${verb} is what it needs`)).toBeUndefined();
  });

  it.each([
    'Take it out',
    'Get the hair out',
    'Take the tape off',
    'Take off the skin',
    'Use a soft cloth',
    'Use your finger',
    'Give it a light rub',
    'Give each run one more stroke',
    'Heat the spot',
    'Warm it',
    'Go over it with a cloth',
    'See to it with your fingernail',
    'Then press it down',
    'Now wipe it',
    'Lightly sand it',
    'You can rub it',
    'You may wipe it off',
    'You should press it',
    'It is safe to sand it',
    'Try to lift it',
    'Leave it, and wipe the edge',
    'Leave it but press the edge',
    'Leave it. Wipe the edge',
    'Leave it; wipe the edge',
    'Even out the edge',
  ])('%s', (text) => {
    expect(touchOrdered(text)).toBeDefined();
  });

  it.each([
    'Leave it alone',
    'Wait for a day',
    'Watch it in low light',
    'Press-on tape is not needed',
    'The cloth lies beside it',
    'Once it is dry, sand it',
    'Leave it until tomorrow, then wipe it',
    'Leave it for two days, then sand it',
    'Dust may settle',
    'Paint dries slowly',
    'It will wipe off by itself',
    'Keep the lamp off',
    '',
  ])('%s: none', (text) => {
    expect(touchOrdered(text)).toBeUndefined();
  });

  it('a sentence that begins with an order is one, whatever time follows', () => {
    expect(touchOrdered('Wipe it, then wait until tomorrow')).toBe('Wipe it');
    expect(touchOrdered('Sand it once it is dry')).toBeDefined();
  });

  it('tells the first five words', () => {
    expect(touchOrdered('Rub the whole top very hard now')).toBe('Rub the whole top very');
    // Also where no verb but the tool tells of it.
    expect(touchOrdered('Go over it slowly with a soft cloth')).toBe('Go over it slowly with');
  });

  it('what is told of a time to come is no order of looking again', () => {
    expect(touchAgain('Wipe it')).toBeDefined();
    for (const later of [
      'once',
      'when',
      'until',
      'tomorrow',
      'later',
      'overnight',
      'days',
      'week',
      'month',
      'hard',
      'dry',
      'cured',
    ])
      expect(touchAgain(`Wipe it ${later}`)).toBeUndefined();
  });
});

describe('what a film bears though it is left alone', () => {
  it('a spill is blotted off a dry film, a cloth off open oil and wax, nothing while it sets', () => {
    const blot = ['absorb', 'blot', 'soak'];
    expect(bornBy('dry-to-touch', false)).toEqual(blot);
    expect(bornBy('wet', false)).toEqual([]);
    expect(bornBy('setting', false)).toEqual([]);
    expect(bornBy('setting', true)).toEqual([]);
    for (const stage of ['wet', 'dry-to-touch'] as const)
      for (const verb of [...blot, 'dab', 'mop', 'swab', 'wick', 'wipe'])
        expect(bornBy(stage, true)).toContain(verb);
    expect(bornBy('wet', true)).not.toContain('sand');
  });

  it('and only that is passed over', () => {
    expect(touchOrdered('Blot it up', ['blot'])).toBeUndefined();
    expect(touchOrdered('Blot it up, and rub it', ['blot'])).toBe('rub it');
    expect(touchOrdered('Rub it', ['blot'])).toBeDefined();
    expect(touchOrdered('Take it out', ['blot'])).toBeDefined();
  });
});
