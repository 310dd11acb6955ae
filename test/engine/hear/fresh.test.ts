/** What is said of a coat that moves is what the page of that flaw says of it. Stories are invented. */
import { describe, expect, it } from 'vitest';
import { buildIndex, documentsOf } from '#engine/find.ts';
import { consider, flawWords, mindOf, reply, type ToldFacts } from '#engine/hear.ts';
import { emptyCase, walk, withStanding } from '#engine/index.ts';
import { readSearchWords } from '../../../content/tools/hear.ts';
import { heard, known, words } from './hearing.ts';

const mind = mindOf(known);
const index = buildIndex(documentsOf(known), readSearchWords(process.cwd()));
const considered = (text: string, told: ToldFacts = {}) =>
  consider(mind, { told, heard: heard(text), words: flawWords(index, mind, text, heard(text)) });
const answer = (text: string) =>
  reply(considered(text), {
    words,
    linkTo: (defect) => `https://halfdry.example/${defect}/`,
    heard: heard(text),
  });

describe('a flaw that is told in a coat that is wet', () => {
  it.each([
    ['there are runs on the door, poly still wet, can I brush them out?', 'runs-and-sags'],
    ['runs, still wet', 'runs-and-sags'],
    ['a fat edge, still wet', 'fat-edges'],
    ['I wiped tung oil on the table and it is sticky, there is a wet puddle of oil on it', 'sticky-oil'],
  ])('has the hands and the words of its own page: %s', (text, defect) => {
    const walked = walk(known, withStanding(emptyCase(), 'wet', 'answered'), defect);
    if (walked.kind !== 'outcome') throw new Error('asks first');
    const { likely, stage, now } = considered(text, { stage: 'wet' });
    expect([likely[0]?.defect, stage]).toEqual([defect, 'wet']);
    expect(now).toMatchObject({
      do: walked.action.do,
      verdict: walked.action.verdict,
      say: walked.action.say,
      not: walked.action.not,
    });
  });

  it('says in the reply how it is done', () => {
    const { short } = answer('there are runs on the door, poly still wet, can I brush them out?');
    expect(short).toContain('one slow pull of a nearly dry brush');
    expect(short).not.toContain('tweezers');
  });

  it.each(['a pool in the corner, still wet', 'my poly has bubbles, still wet', 'brush marks, wet'])(
    'is left alone until it is known what hands may do: %s',
    (text) => {
      const { now } = considered(text);
      expect(now).toMatchObject({ do: 'leave', hangs: true, sure: false });
      const { short } = answer(text);
      expect(short).toMatch(/Hands off(?: until we know which it is\.|: no brush)/);
      expect(short).not.toContain('Nothing has to be');
    },
  );

  it('goes on to those hands once the answer is told', () => {
    const told = { stage: 'wet', 'only-in-grooves-and-corners': 'yes' };
    expect(considered('a pool in the corner, still wet', told).now).toMatchObject({
      do: 'wick',
      verdict: known.get('doing', 'wick').verdict,
    });
  });

  it('is not hung on what the time answers', () => {
    const { now } = considered('I brushed poly on my coffee table 2 hrs ago, full of bubbles', {
      stage: 'wet',
    });
    expect(now).toMatchObject({ do: 'leave' });
    expect(now).not.toHaveProperty('hangs');
  });

  it('hangs on nothing where every way leaves it alone', () => {
    const { now } = considered('water based poly went milky over navy, still wet');
    expect(now).toMatchObject({ do: 'leave', sure: true });
    expect(now).not.toHaveProperty('hangs');
  });
});

it('knows of every flaw what its page says of a coat that moves, by each answer', () => {
  let ends = 0;
  for (const stage of ['wet', 'setting'] as const)
    for (const [defect, way] of Object.entries(mind.fresh[stage])) {
      const walked = walk(known, withStanding(emptyCase(), stage, 'answered'), defect);
      if ('asks' in way) expect(walked).toMatchObject({ kind: 'question', question: way.asks });
      else {
        ends += 1;
        const { do: doing, say, not } = 'words' in way ? way.words : (mind.words[way.act] ?? {});
        expect(walked).toMatchObject({ kind: 'outcome', action: { do: doing, say, not } });
      }
    }
  expect(ends).toBeGreaterThan(15);
});
