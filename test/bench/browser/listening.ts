/** Hearing a long post, a keystroke of the search, and the next question, as a slow phone feels them. */
import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { mindOf } from '#engine/hear.ts';
import type { Knowledge } from '#engine/index.ts';
import { readHearing } from '../../../content/tools/hear.ts';
import { readIndex } from '../../../content/tools/said.ts';
import { codeOf } from '../../bundle.ts';
import { beliefCases } from '../belief-cases.ts';
import { median } from '../measure.ts';
import type { Row } from '../row.ts';
import { bare, served, slowTab } from './chrome.ts';

type Ear = typeof import('../in-page/ear.ts');

const POST_LENGTH = 4_000;
const POSTS = 24;
/** Phrases that are typed a letter at a time. */
const TYPED = 24;
const CASES = 80;
const P95 = 0.95;
const GOALS = { hear: 30e6, type: 4e6, ask: 16e6 } as const;

const textsIn = (file: string, field: string): readonly string[] =>
  readFileSync(file, 'utf8')
    .trim()
    .split('\n')
    .map((line) => String((JSON.parse(line) as Record<string, unknown>)[field]));

/** Posts of one length: what people wrote, one after the other. */
const longPosts = (): readonly string[] => {
  const all = textsIn('test/words/posts.open.jsonl', 'text').join('\n\n');
  return Array.from({ length: POSTS }, (_, at) => all.slice(at * POST_LENGTH, (at + 1) * POST_LENGTH)).filter(
    (post) => post.length === POST_LENGTH,
  );
};

export const listening = async (browser: Browser, known: Knowledge): Promise<readonly Row[]> => {
  const root = process.cwd();
  const mind = mindOf(known);
  const given = {
    hearing: readHearing(known, root),
    index: readIndex(known, root),
    mind,
    posts: longPosts(),
    phrases: textsIn('test/words/phrases.open.jsonl', 'q').slice(0, TYPED),
    cases: beliefCases(mind, CASES),
  };
  const code = await codeOf('test/bench/in-page/ear.ts', 'ear');
  const times = await served(bare, (base) =>
    slowTab(browser, base, async ({ page }) => {
      await page.goto('/');
      await page.addScriptTag({ content: code });
      return page.evaluate(({ hearing, index, mind: held, posts, phrases, cases }) => {
        const ear = Reflect.get(globalThis, 'ear') as Ear;
        const timed = (work: () => unknown): number => {
          const began = performance.now();
          work();
          return (performance.now() - began) * 1e6;
        };
        // What the page does while nothing is typed yet. Of the ear's data it takes these two.
        const ready = ear.warmUpSteps({ hearing, mind: held } as never, index).map((step) => timed(step));
        const hear = posts.map((post) => timed(() => ear.hear(hearing, post)));
        const whole = posts.map((post) =>
          timed(() => {
            const heard = ear.hear(hearing, post);
            ear.consider(held, { told: {}, heard, words: ear.flawWords(index, held, post, heard) });
          }),
        );
        const type = phrases.flatMap((phrase) =>
          [...phrase].map((_, at) => timed(() => ear.hitsFor(index, phrase.slice(0, at + 1), true))),
        );
        const bears = { stage: 'cured', waits: new Set<never>() } as const;
        const ask = cases.map((told) => timed(() => ear.nextAsked(held, ear.believe(held, { told }), bears)));
        return { ready, hear, whole, type, ask };
      }, given);
    }),
  );
  const lines = (what: string, all: readonly number[], goal?: number): readonly Row[] => {
    const sorted = [...all].sort((a, b) => a - b);
    return [
      { what, name: 'median', value: median(sorted), unit: 'ns' },
      {
        what: '',
        name: 'p95',
        value: sorted[Math.floor(sorted.length * P95)] ?? Number.NaN,
        unit: 'ns',
        ...(goal !== undefined && { goal: { most: goal, of: 'value' as const } }),
      },
    ];
  };
  return [
    {
      what: `the ear made ready before anything is typed, in ${times.ready.length} idle moments`,
      name: 'all',
      value: times.ready.reduce((sum, time) => sum + time, 0),
      unit: 'ns',
    },
    { what: '', name: 'the longest', value: Math.max(...times.ready), unit: 'ns' },
    ...lines(`a post of ${POST_LENGTH.toLocaleString('en-US')} characters heard`, times.hear, GOALS.hear),
    ...lines('the same, to the verdict', times.whole),
    ...lines('a keystroke in the search', times.type, GOALS.type),
    ...lines('the next question by belief, facts told', times.ask, GOALS.ask),
  ];
};
