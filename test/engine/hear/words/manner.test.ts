/**
 * What denies, plans or fears a phrase, or tells that it is over, on a small invented lexicon. Sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import { mannerIn } from '../small-ear.ts';

describe('how it is said', () => {
  const at = (text: string, sense: string) => {
    const { matches, manner } = mannerIn(text);
    const match = matches.find((one) => one.sense === sense);
    if (!match) throw new Error(`no ${sense} in "${text}"`);
    return { match, manner };
  };
  const denied = (text: string, sense = 'sign round yes') => {
    const { match, manner } = at(text, sense);
    return manner.denied(match) !== undefined;
  };
  it.each([
    'no bubbles',
    'not one of those bubbles',
    'there are no bubbles',
    'without bubbles',
    'never any bubbles',
    'no dust, runs or bubbles',
    'no dust, nor bubbles',
    'bubbles free',
  ])('denied: %s', (text) => {
    expect(denied(text)).toBe(true);
  });
  it.each([
    'bubbles',
    'bubbles, no dust',
    'no dust but bubbles',
    'no dust. Bubbles',
    'not only bubbles',
    'no, bubbles',
    'no dust, bubbles',
    'no dust and the bubbles came',
    'not that I would ever have seen bubbles',
    'not much of it here to see, and this is all I see, bubbles or dust',
    'bubbles. Free',
  ])('told: %s', (text) => {
    expect(denied(text)).toBe(false);
  });

  const notYet = (text: string, sense = 'fact family oil') => {
    const { match, manner } = at(text, sense);
    return manner.notYet(match);
  };
  it.each([
    'I want to oil it',
    'can I use oil',
    'the plan is oil',
    'I may use oil',
    'oil?',
    'is oil ok?',
    'I want to sand and then oil it',
  ])('planned or asked: %s', (text) => {
    expect(notYet(text)).toBe(true);
  });
  it.each([
    'I used oil',
    'oil, and I want to know',
    'I want to know but I used oil',
    'I want to redo doors that were in oil',
    'I want to redo doors that I did in oil',
    'can I sleep where the bed was in oil',
    'back in may it was oil',
    'since may it is oil',
    'how can I fix the oil',
    'can I get the oil off',
    'is it the oil that made it all so?',
  ])('told: %s', (text) => {
    expect(notYet(text)).toBe(false);
  });
  it('a repair that is asked for tells what it is done to, and a plan does not', () => {
    for (const text of [
      'can I remove the oil',
      'can I clean the oil',
      'can I get rid of oil',
      'can I take oil out',
    ])
      expect(notYet(text), text).toBe(false);
    for (const text of ['can I get oil', 'can I take oil', 'want to remove oil'])
      expect(notYet(text), text).toBe(true);
  });

  const feared = (text: string) => {
    const { match, manner } = at(text, 'sign round yes');
    return manner.feared(match);
  };
  it('what is feared is no sign, and a hope ends at the comma', () => {
    for (const text of ['I am afraid of bubbles', 'I hope for no bubbles']) expect(feared(text)).toBe(true);
    for (const text of ['bubbles, I am afraid', 'I hope you help, bubbles', 'afraid but it bubbles'])
      expect(feared(text)).toBe(false);
  });

  const over = (text: string) => {
    const { match, manner } = at(text, 'sign round yes');
    return manner.over(match);
  };
  it('what went away is over, in its sentence or told next of what was', () => {
    for (const text of ['bubbles that went away', 'there were bubbles. Gone now', 'bubbles, gone'])
      expect(over(text), text).toBe(true);
    for (const text of [
      'bubbles',
      'gone are they, bubbles',
      'bubbles. Gone now',
      'there were bubbles. I see. Gone',
    ])
      expect(over(text), text).toBe(false);
  });
});
