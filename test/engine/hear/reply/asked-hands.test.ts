/** What somebody asks to be allowed, sentence by sentence. Sentences of our own; what each asks is plain from its words. */
import { describe, expect, it } from 'vitest';
import { askedHands } from '#engine/hear/reply/asked-hands.ts';
import { words } from '../hearing.ts';

const hands = (text: string) => askedHands(text, words).map(({ hand }) => hand);

describe('a question about hands', () => {
  it.each([
    'Can I',
    'could we',
    'Should she',
    'may I',
    'must he',
    'do I',
    'do they',
    'shall we',
    'would you',
    'is it ok to',
    'Is it okay to',
    'is it safe to',
    'would it be fine to',
    'is it all right if I',
    'is it alright to',
    'am I allowed to',
    'are we better to',
    'I need to',
    'do I have to',
    'I want to',
    'I am tempted to',
    'it is best to',
  ])('%s sand it', (ask) => {
    expect(hands(`${ask} sand it?`)).toEqual(['sand']);
  });

  it.each([
    'I sanded it.',
    'We sand it on Mondays.',
    'He sanding it.',
    'They cannot see it. Sand is everywhere.',
  ])('%s asks nothing of hands', (text) => {
    expect(hands(text)).toEqual([]);
  });

  it.each<[string, string]>([
    ['wipe it', 'wipe'],
    ['keep wiping it', 'wipe'],
    ['blot it', 'wipe'],
    ['lay another coat', 'coat'],
    ['lay a second coat', 'coat'],
    ['put one more coat on', 'coat'],
    ['lay more coats', 'coat'],
    ['recoat it', 'coat'],
    ['re-coat it', 'coat'],
    ['paint over it', 'coat'],
    ['poly over it', 'coat'],
    ['seal over it', 'coat'],
    ['top-coat over it', 'coat'],
    ['add another', 'coat'],
    ['add a thin one', 'coat'],
    ['sand it', 'sand'],
    ['start sanding', 'sand'],
    ['buff it', 'sand'],
    ['rub it out', 'sand'],
    ['rub them down', 'sand'],
    ['brush it out', 'brush'],
    ['roll it again', 'brush'],
    ['smooth them out', 'brush'],
    ['tip it off', 'brush'],
    ['brush out the runs', 'brush'],
    ['pop them', 'pop'],
    ['prick them', 'pop'],
    ['poke it', 'pop'],
    ['scrape it', 'scrape'],
    ['peel it', 'scrape'],
    ['pick at it', 'scrape'],
    ['shave it', 'scrape'],
    ['strip it', 'strip'],
    ['start over', 'strip'],
    ['start all over', 'strip'],
    ['use a hair dryer', 'heat'],
    ['use a hairdryer', 'heat'],
    ['use a heat gun', 'heat'],
    ['use a heater', 'heat'],
    ['heat them', 'heat'],
    ['touch it', 'touch'],
    ['press it', 'touch'],
    ['feel them', 'touch'],
  ])('can I %s', (words, hand) => {
    expect(hands(`Can I ${words}?`)).toEqual([hand]);
  });

  it.each([
    'Can I use the water heater',
    'Can I use the gas heater',
    'Can I have the sandbox',
    'Can I see the wipers',
    'Can I rub my eyes',
    'Can I brush the dog',
    'Can I paint the wall',
    'Can I touch base with you',
    'Can I have a popsicle',
    'Can I get a stripper',
  ])('%s: none of these', (text) => {
    expect(hands(`${text}?`)).toEqual([]);
  });

  it('is of what stands behind the asking, in that sentence alone', () => {
    expect(hands('I sanded it and it is dull, can I leave it?')).toEqual([]);
    expect(hands('Can I leave it? I sanded it.')).toEqual([]);
    expect(hands('Can I leave it\nI sanded it.')).toEqual([]);
    expect(hands('It has runs. Can I scrape them? Or should I sand them?')).toEqual(['scrape', 'sand']);
  });

  it('comes in the order of the words, each hand once', () => {
    expect(hands('Should I strip it or sand it or just wipe it?')).toEqual(['strip', 'sand', 'wipe']);
    expect(hands('Can I wipe it? Can I sand it? May I wipe them?')).toEqual(['wipe', 'sand']);
    expect(hands('It is soft. Must I strip it? Can I pop it?')).toEqual(['strip', 'pop']);
  });

  it.each(['no', 'without', 'avoid', 'skip'])('what is to be spared is not asked for: %s sanding', (word) => {
    expect(hands(`Can I fix it, ${word} sanding?`)).toEqual([]);
    expect(hands(`Can I fix it, ${word} the sanding?`)).toEqual(['sand']);
  });

  it('is answered with the word that stood for it', () => {
    const denied = (text: string) => askedHands(text, words).map((one) => one.denied);
    expect(denied('Can I wipe it?')).toEqual(['do not wipe it']);
    expect(denied('Can I wipe them?')).toEqual(['do not wipe them']);
    expect(denied('Can I wipe those off?')).toEqual(['do not wipe them']);
    expect(denied('They are many. Can I wipe it?')).toEqual(['do not wipe it']);
    expect(denied('Can I tell them and wipe it?')).toEqual(['do not wipe it']);
    for (const text of [
      'sand it',
      'brush it out',
      'pop it',
      'scrape it',
      'strip it',
      'heat it',
      'touch it',
    ]) {
      const [hand = ''] = text.split(' ');
      expect(denied(`Can I ${text}?`)[0]).toMatch(new RegExp(`^do not ${hand} it`));
    }
    expect(denied('Can I add another coat?')).toEqual(['do not lay another coat']);
  });
});
