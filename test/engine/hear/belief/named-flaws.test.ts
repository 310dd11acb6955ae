/** Which flaws a text names. The texts are invented; that each of two is answered is what whoever wrote them asks for. */
import { describe, expect, it } from 'vitest';
import { fitsAllWhileFresh, namedFlaws } from '#engine/hear/belief/named-flaws.ts';
import { consider, flawWords, mindOf } from '#engine/hear.ts';
import { readIndex } from '../../../../content/tools/said.ts';
import { heard, known } from '../hearing.ts';

const mind = mindOf(known);
const index = readIndex(known, process.cwd());
const all = (text: string) => {
  const told = heard(text);
  const { likely } = consider(mind, {
    told: {},
    heard: told,
    words: flawWords(index, mind, text, heard(text)),
  });
  return namedFlaws(mind, index, told, likely);
};
const named = (text: string) => all(text).flatMap(({ defect, denied }) => (denied ? [] : [defect]));

describe('the flaws that a text names', () => {
  it.each([
    ['milky and bubbly', ['cloudy-film', 'bubbles']],
    ['my dresser looks milky and bubbly, still wet', ['cloudy-film', 'bubbles']],
    ['it has brush marks and hairs', ['brush-marks', 'hairs-and-dust']],
    ['peeling, with runs on the leg', ['peeling', 'runs-and-sags']],
    ['cracks, and it has turned yellow', ['cracking', 'yellowing']],
  ])('are all heard: %s', (text, flaws) => {
    expect(named(text)).toEqual(flaws);
  });

  it.each([
    'second coat of satin poly over navy paint last night',
    'still wet',
    'what coat on a kitchen table',
    '',
  ])('are none where nothing is seen: %s', (text) => {
    expect(named(text)).toEqual([]);
  });

  it('are not there where they are denied, or where a place is told', () => {
    expect(named('no bubbles but it is milky')).toEqual(['cloudy-film']);
    expect(all('no bubbles but it is milky')).toContainEqual(
      expect.objectContaining({ defect: 'bubbles', denied: true }),
    );
    expect(named('it peels at the edges')).not.toContain('fat-edges');
    expect(named('foggy near the edges')).not.toContain('fat-edges');
  });

  it('rest on the words that name them', () => {
    const text = 'so the top is milky now';
    const [flaw] = all(text);
    expect(text.slice(flaw?.span.from, flaw?.span.to)).toBe('milky');
  });

  it('share a verdict while the film is not dry where each may get it, and only then', () => {
    const both = all('milky and bubbly');
    expect(both).toHaveLength(2);
    const hands = mind.words[mind.acts.indexOf('leave')]?.verdict ?? '';
    expect(fitsAllWhileFresh(mind, 'wet', both, hands)).toBe(true);
    expect(fitsAllWhileFresh(mind, 'cured', both, hands)).toBe(false);
    expect(fitsAllWhileFresh(mind, 'wet', all('milky, with runs'), hands)).toBe(false);
  });
});
