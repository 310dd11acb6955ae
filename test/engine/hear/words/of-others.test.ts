/** What others did to things of their own, and what is ours: pairs of sentences of our own. */
import { describe, expect, it } from 'vitest';
import { isOfOthers } from '#engine/hear/words/of-others.ts';
import { marked } from '../marked.ts';

describe('what others did to things of their own', () => {
  const of = (text: string): boolean => {
    const { words, from, to } = marked(text);
    return isOfOthers(words, from, to);
  };
  it.each([
    'my buddy put [six coats] on his',
    'the old guy used [shellac] on his table',
    'my uncle swears by [oil]',
    'most folks do [two coats]',
    'he put [six coats] on his own',
    'they use [wax] on theirs',
    'everyone uses [oil]',
    'a friend always likes [oil]',
    'my neighbor did hers in [lacquer]',
    'he [sprayed] the fence',
    'we [painted] walls',
    'I [rolled] the ceiling',
    'one of them put [shellac] on it',
    'someone put [shellac] on it',
    'another had [wax] there',
  ])('%s', (text) => {
    expect(of(text)).toBe(true);
  });
  it.each([
    'my buddy put [six coats] on my table',
    'my buddy, and I put [six coats] on his',
    'the guy said it was [oil]',
    'my uncle gave me [oil]',
    'I put [six coats] on his',
    'he [sprayed] my fence',
    'he [sprayed] the dresser',
    'he [saw] the fence',
    'one of them put [shellac] on mine',
    'one of my own had [shellac]',
    'someone of us put [shellac] on ours',
    'my friend brushed [shellac]',
    'the man put [six coats] on his',
    'but his is fine because I used [oil]',
  ])('%s: ours, or nobody’s', (text) => {
    expect(of(text)).toBe(false);
  });
});
