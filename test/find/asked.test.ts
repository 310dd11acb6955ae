/**
 * What people ask for in few words, and the page that answers it. The words are our own; that each page answers them is
 * plain from its title.
 */
import { describe, expect, it } from 'vitest';
import { find, pageName } from '#engine/find.ts';
import { readIndex } from '../../content/tools/said.ts';
import { known } from '../content/real/knowledge.ts';

const index = readIndex(known, process.cwd());
const first = (query: string) => {
  const [hit] = find(index, query, { limit: 1 });
  return hit && !hit.perhaps ? pageName(hit) : undefined;
};

describe('the first page', () => {
  it.each([
    ['hands off', 'rule/hands-off-a-setting-film'],
    ['handout', 'page/learn/practice/sheet'],
    ['handouts', 'page/learn/practice/sheet'],
    ['worksheet', 'page/learn/practice/sheet'],
    ['worksheets', 'page/learn/practice/sheet'],
    ['kitchen table', 'page/which-coat'],
    ['Kitchen tables', 'page/which-coat'],
    ['coffee table', 'page/which-coat'],
    ['kitchen cabinets', 'page/which-coat'],
    ['rain on a wet coat', 'rule/weather-on-a-wet-coat'],
    ['it rained on my wet varnish', 'rule/weather-on-a-wet-coat'],
    ['sun on a wet coat', 'rule/weather-on-a-wet-coat'],
    ['the sun came round and hit the wet coat', 'rule/weather-on-a-wet-coat'],
    ['varnish on the outdoor bench is chalking', 'lesson/outdoors-and-sun'],
    ['footprints', 'print-marks'],
    ['footprints in the poly', 'print-marks'],
    ['foggy near the edges', 'cloudy-film'],
    ['poly over mineral oil will not dry', 'tacky-film'],
  ])('of %j is %s', (query, page) => expect(first(query)).toBe(page));
});
