/**
 * Flaws that some words of a text name by themselves, on a small invented mind and search: which words may name one, when
 * they are denied, and which of two alike is meant.
 */
import { describe, expect, it } from 'vitest';
import { buildIndex, type FindDocument } from '#engine/find.ts';
import { flawWords } from '#engine/hear/belief/flaw-words.ts';
import { fitsAllWhileFresh, namedFlaws } from '#engine/hear/belief/named-flaws.ts';
import type { Heard } from '#engine/hear/words/heard.ts';
import { heardOf, mind } from '../small-mind.ts';

const WORDS = { stop: ['the', 'and', 'no'], silent: ['the', 'and'], spellings: {} };
const page = (id: string, title: string, also: string[]): FindDocument => ({
  id,
  kind: 'defect',
  title,
  also,
  signs: [],
  text: '',
});
const DOCUMENTS = [
  page('bubbles', 'Bubbles', ['tiny bubbles', 'foam']),
  page('cracks', 'Cracks', ['long cracks', 'crazing']),
  page('dust', 'Dust', ['gritty dust', 'specks']),
  page('haze', 'Haze', ['milky haze', 'cloudy']),
  { ...page('wax', 'Paste wax', ['wax']), kind: 'remedy' as const },
];
const said = DOCUMENTS.flatMap(({ id, kind, title, also }) =>
  kind === 'defect'
    ? [title, ...also].flatMap((say) => [say, `${say} everywhere`].map((one) => ({ say: one, is: [id] })))
    : [],
);
const index = buildIndex(DOCUMENTS, WORDS, said);
const small = mind();
const LIKELY = small.matrix.defects.map((defect, at) => ({
  defect,
  name: small.names[at] ?? '',
  chance: 0.25,
}));

/** A text with what is seen in brackets, each answered yes to the question of its flaw. */
const QUESTION: Readonly<Record<string, string>> = { bubbles: 'round', cracks: 'long', haze: 'gray' };
const heardIn = (
  text: string,
  answers: Readonly<Record<string, 'yes' | 'no'>> = {},
  more: Partial<Heard> = {},
): Heard => {
  const plain = text.replaceAll(/[[\]]/g, '');
  let shift = 0;
  const signs = [...text.matchAll(/\[([^\]]+)\]/g)].map((found) => {
    const from = found.index - shift;
    shift += 2;
    const words = found[1] ?? '';
    const flaw = Object.keys(QUESTION).find((one) => words.includes(one)) ?? 'bubbles';
    const question = QUESTION[flaw] ?? 'round';
    return {
      question,
      answer: answers[question] ?? 'yes',
      sure: 0.8,
      rests: [{ from, to: from + words.length }],
      against: [],
    } as const;
  });
  return heardOf({ text: plain, signs, ...more });
};
const named = (heard: Heard, likely = LIKELY) =>
  namedFlaws(small, index, heard, likely).map(
    ({ defect, denied }) => `${defect}${denied ? ' (denied)' : ''}`,
  );

describe('flaws that words name', () => {
  it('are told each once, in reading order, with their names and places', () => {
    expect(named(heardIn('there are [bubbles] and, lower down, [cracks]'))).toEqual(['bubbles', 'cracks']);
    expect(named(heardIn('there are [cracks] and, lower down, [bubbles]'))).toEqual(['cracks', 'bubbles']);
    expect(named(heardIn('[bubbles] here. [tiny bubbles] there'))).toEqual(['bubbles']);
    const [one] = namedFlaws(small, index, heardIn('I see [bubbles] in it'), LIKELY);
    expect(one).toMatchObject({
      defect: 'bubbles',
      name: 'Bubbles',
      span: { from: 6, to: 13 },
      denied: false,
    });
    expect(named(heardIn('nothing'))).toEqual([]);
  });
  it('are denied where the answers speak against them, in few words', () => {
    expect(named(heardIn('[no bubbles] in it', { round: 'no' }))).toEqual(['bubbles (denied)']);
    expect(named(heardIn('[no more tiny bubbles] in it', { round: 'no' }))).toEqual([]);
    expect(named(heardIn('[tiny bubbles foam everywhere] in it'))).toEqual(['bubbles']);
  });
  it('are not named by a place, by words that join two, or by words of a fact', () => {
    for (const text of [
      '[in bubbles]',
      '[on bubbles]',
      '[under bubbles]',
      '[bubbles and cracks]',
      '[bubbles or haze]',
      '[bubbles, tiny]',
      '[bubbles with haze]',
      '[spots]',
      '[edges]',
      '[Corners]',
    ])
      expect(named(heardIn(text)), text).toEqual([]);
    expect(
      named(
        heardIn(
          '[bubbles]',
          {},
          { facts: [{ fact: 'age', value: 'unknown', sure: 0.9, rests: [{ from: 5, to: 9 }], against: [] }] },
        ),
      ),
    ).toEqual([]);
    expect(
      named(
        heardIn(
          '[bubbles] x',
          {},
          { facts: [{ fact: 'age', value: 'unknown', sure: 0.9, rests: [{ from: 7, to: 9 }], against: [] }] },
        ),
      ),
    ).toEqual(['bubbles']);
  });
  it('are not named by words that no flaw has, or that another page has', () => {
    for (const text of ['[zzz qqq]', '[paste wax]', '[everywhere]'])
      expect(named(heardIn(text)), text).toEqual([]);
  });
  it('words that answer nothing of the flaw do not name it', () => {
    const dust = heardIn('[gritty dust]');
    expect(named({ ...dust, signs: dust.signs.map((one) => ({ ...one, question: 'soft' })) })).toEqual([]);
  });
  it('alone are weighed as the search weighs them', () => {
    const alone = [...flawWords(index, small, 'tiny bubbles')];
    expect(alone.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 9);
    expect(alone.indexOf(Math.max(...alone))).toBe(0);
    expect([...flawWords(index, small, 'zzz')].every((one) => Number.isFinite(one))).toBe(true);
  });
});

describe('a verdict on a film that is not dry', () => {
  const flaws = (...defects: readonly string[]) =>
    defects.map((defect) => ({ defect, name: defect, span: { from: 0, to: 1 }, denied: false }));
  it('is given for several flaws where it fits each', () => {
    const fits = (
      stage: 'wet' | 'setting' | 'dry-to-touch' | 'cured',
      verdict: string,
      ...defects: readonly string[]
    ) => fitsAllWhileFresh(small, stage, flaws(...defects), `Verdict ${verdict}`);
    expect(fits('wet', 'leave', 'bubbles', 'dust')).toBe(true);
    expect(fits('setting', 'leave', 'bubbles', 'cracks')).toBe(true);
    expect(fits('setting', 'leave', 'bubbles', 'dust')).toBe(false);
    expect(fits('setting', 'wait', 'dust')).toBe(true);
    expect(fits('wet', 'wait', 'dust')).toBe(false);
    expect(fits('dry-to-touch', 'wait', 'dust')).toBe(false);
    expect(fits('cured', 'repair', 'bubbles')).toBe(false);
    expect(fits('wet', 'leave', 'gone')).toBe(false);
    expect(fits('wet', 'leave')).toBe(true);
  });
});
