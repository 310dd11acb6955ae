/** What asks for a page and tells of no flaw. The texts are invented. */
import { describe, expect, it } from 'vitest';
import { pageAsked } from '#engine/find/page-asked.ts';
import { readIndex } from '../../../content/tools/said.ts';
import { known } from '../../content/real/knowledge.ts';

const index = readIndex(known, process.cwd());
const asked = (text: string) => {
  const hit = pageAsked(index, text);
  return hit && `${hit.kind}/${hit.id}`;
};

describe('a question about the job', () => {
  it.each([
    ['how long until i can put my lamp back, water based poly, last coat sunday', 'page/clock'],
    ['how many coats of poly on a kitchen table', 'page/schedule'],
    ['do i have to sand between coats of shellac', 'lesson/sand-between-coats'],
    // "What grit between coats" alone leaves open whether a flaw between the coats is meant.
    ['which grit do i use to sand between coats', 'lesson/sand-between-coats'],
    ['do i need a respirator for water based poly', 'rule/mask-is-not-for-vapor'],
    ['is danish oil food safe on a beech worktop', 'rule/food-surface'],
  ])('is answered by a page: %s', (text, page) => {
    expect(asked(text)).toBe(page);
  });
});

describe('a text that tells of a flaw', () => {
  it.each([
    'cloudy satin poly over navy',
    'my poly has bubbles, 2 hours ago',
    'white rings on the table, how to remove',
    'sticky after a week, oil based poly',
    'fly in the wet varnish',
    'how do I get brush marks out of dry varnish',
    '',
    'xylophone',
  ])('is not: %s', (text) => {
    expect(asked(text)).toBeUndefined();
  });
});
