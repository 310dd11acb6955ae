/** The page, the command and the search come to one reply, since all three go one way from a post to it. */
import { describe, expect, it } from 'vitest';
import { answerFor, weigh } from '#engine/hear.ts';
import { answerLinks as ofCommand } from '../../content/tools/answer-links.ts';
import { answerLinks as ofSite } from '../../site/client/shared/answer-links.ts';
import { understanding } from '../engine/hear/hearing.ts';
import { oneInSo } from '../thorough.ts';
import { readPosts } from '../words/words.ts';

const posts = readPosts('open');

/** Long: every post is heard, weighed and answered twice. */
const MINUTES = 5;

describe('an open post', () => {
  it(
    'is told by the command as by the page',
    () => {
      expect(posts.length).toBeGreaterThan(500);
      for (const post of oneInSo(6, posts)) {
        const weighed = weigh(understanding, post);
        const [page, command] = [ofSite(''), ofCommand].map((links) => {
          const { answer, which, page: offered } = answerFor(understanding, post, weighed, links);
          return { answer, which, offered };
        });
        expect(command).toEqual(page);
      }
    },
    MINUTES * 60_000,
  );
});

describe('a link of a reply', () => {
  it.each([
    ['page', 'clock', { air: '58', units: 'us' }, '/clock/#air=58&units=us'],
    ['page', 'schedule', {}, '/schedule/'],
    ['rule', 'oily-rags', {}, '/safety/oily-rags/'],
    ['lesson', 'wet-edge', {}, '/learn/wet-edge/'],
    ['defect', 'bubbles', {}, '/defects/bubbles/'],
    ['remedy', 'scuff-and-recoat', {}, '/remedies/scuff-and-recoat/'],
    ['glossary', 'mil', {}, '/glossary/#mil'],
    ['product', 'shellac', {}, '/first-coat/#can'],
  ])('of a %s %s leads alike', (kind, id, carried, to) => {
    expect(ofCommand.page(kind, id, carried)).toBe(to);
    expect(ofSite('').page(kind, id, carried)).toBe(to);
  });

  it('leads to the answers where a film is soft long past its time, and to none of what is no page', () => {
    for (const links of [ofCommand, ofSite('')]) {
      expect(links.defect('tacky-film', 'overdue')).toBe('/defects/tacky-film/#how-dry');
      expect(links.defect('tacky-film', 'wet')).toBe('/defects/tacky-film/stage-wet/');
      expect(links.page('term', 'x', {})).toBeUndefined();
    }
  });
});
