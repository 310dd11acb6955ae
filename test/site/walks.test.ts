/** From the first page to a repair by tapping alone, on a small phone, with script and without. */
import { describe, expect, it } from 'vitest';
import { nodesOf } from '#engine/index.ts';
import { known } from '../content/real/knowledge.ts';
import { expectQuiet, openPage, PHONE, withoutPictures } from './browser.ts';

withoutPictures();

const FLAWS = ['cloudy-film', 'bubbles', 'hairs-and-dust', 'pools', 'lap-marks'];

/** The shortest way to a repair in a film that is ready for a coat: its answers, and the remedy. */
const shortestRepair = (defect: string) => {
  const repairs = [...nodesOf(known, defect)].flatMap(({ address, stage, walked }) => {
    if (stage !== 'recoatable' || walked.kind !== 'outcome' || walked.action.do !== 'repair') return [];
    const [leaf] = walked.leaves;
    return leaf && 'remedy' in leaf
      ? [{ answers: address.slice(1), remedy: leaf.remedy, verdict: walked.action.verdict }]
      : [];
  });
  const [first] = repairs.sort((a, b) => a.answers.length - b.answers.length);
  if (!first) throw new Error(`${defect} has no repair in a film that is ready for a coat`);
  return first;
};

describe.each([
  ['with script', true],
  ['without script', false],
])('%s', (_name, javaScriptEnabled) => {
  it.each(FLAWS)('%s: from the first page to its repair', async (defect) => {
    const opened = await openPage({ ...PHONE, javaScriptEnabled });
    const { page } = opened;
    const { answers, remedy, verdict } = shortestRepair(defect);
    await page.goto('/');
    // The flaws of one look lie folded together.
    const flaw = page.locator(`.sights a[href="/defects/${defect}/"]`).first();
    await page
      .locator('.sights details', { has: page.locator(`a[href="/defects/${defect}/"]`) })
      .first()
      .locator('summary')
      .tap();
    await flaw.tap();
    await page.getByRole('link', { name: /^Ready for a coat/ }).tap();
    for (const answer of answers) {
      await page.waitForURL((url) => !url.pathname.includes(answer));
      await page.locator(`[data-answer=${answer.slice(answer.lastIndexOf('-') + 1)}]`).tap();
      await page.waitForURL((url) => url.pathname.includes(answer));
    }
    await expect.poll(() => page.getByRole('heading', { name: verdict }).count()).toBe(1);
    await expect
      .poll(() => page.getByRole('heading', { name: known.get('remedy', remedy).name }).count())
      .toBe(1);
    await expect.poll(() => page.locator('.steps > li').count()).toBeGreaterThan(0);
    expectQuiet(opened);
    await opened.close();
  });
});
