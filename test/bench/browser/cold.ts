/** From the bytes of a page to its first answer: engine code and tables beside an if-chain, both cold. */
import type { Browser } from 'playwright-core';
import type { Knowledge } from '#engine/index.ts';
import { codeOf } from '../../bundle.ts';
import { chanceFrom } from '../chance.ts';
import { median } from '../measure.ts';
import { sessionsOf } from '../quick/sessions.ts';
import type { Row } from '../row.ts';
import { startOf } from '../start-data.ts';
import { served, slowTab } from './chrome.ts';

const ROUNDS = 15;

/** The script of a page is compiled, run, and asked once. */
const pageOf = (
  code: string,
  call: string,
): string => `<!doctype html><meta charset="utf-8"><title>cold</title>
<script>performance.mark('begin')</script>
<script>${code.replaceAll('</script', '<\\/script')};
globalThis.answer = ${call.replaceAll('<', '\\u003c')};
performance.mark('end')</script>`;

type Found = { readonly ns: number; readonly answer: string };

export const coldStart = async (browser: Browser, known: Knowledge): Promise<readonly Row[]> => {
  const code = await codeOf('test/bench/in-page/start.ts', 'start');
  const { pick } = chanceFrom(20_261_130);
  const sessions = Array.from({ length: ROUNDS }, () => pick(sessionsOf(known).slice(0, 64)));
  const all = startOf(known, known.defects);
  const pages = new Map<string, string>();
  for (const [round, { defect, unsure, facts }] of sessions.entries()) {
    const flaw = known.get('defect', defect);
    const one = startOf(known, [flaw]);
    const call = (data: string) =>
      `start.first(${[data, defect, unsure, facts].map((given) => JSON.stringify(given)).join(', ')})`;
    pages.set(`/chain-all/${round}`, pageOf(all.chain, call('')));
    pages.set(`/table-all/${round}`, pageOf(code, call(all.data)));
    pages.set(`/chain-one/${round}`, pageOf(one.chain, call('')));
    pages.set(`/table-one/${round}`, pageOf(code, call(one.data)));
  }
  const names = ['chain-all', 'table-all', 'chain-one', 'table-one'] as const;
  const found = await served(
    (request, response) =>
      response
        .writeHead(200, { 'Content-Type': 'text/html; charset=utf-8' })
        .end(pages.get(request.url ?? '') ?? ''),
    async (base) => {
      const rounds: Found[][] = [];
      for (let round = 0; round < ROUNDS; round++) {
        const one: Found[] = [];
        for (const name of names)
          one.push(
            // A process of its own, so that nothing is warm.
            await slowTab(browser, base, async ({ page }) => {
              await page.goto(`/${name}/${round}`);
              return page.evaluate(() => ({
                ns: 1e6 * performance.measure('cold', 'begin', 'end').duration,
                answer: JSON.stringify(Reflect.get(globalThis, 'answer')),
              }));
            }),
          );
        for (const at of [0, 2])
          if (!one[at]?.answer || one[at].answer !== one[at + 1]?.answer)
            throw new Error(`cold, round ${round}: ${one[at]?.answer} is not ${one[at + 1]?.answer}`);
        rounds.push(one);
      }
      return rounds;
    },
  );
  const lines = (what: string, at: number): readonly Row[] => {
    const ratios = found
      .map((round) => (round[at + 1]?.ns ?? 0) / (round[at]?.ns ?? 1))
      .sort((a, b) => a - b);
    return [
      { what, name: 'if-chain', value: median(found.map((round) => round[at]?.ns ?? 0)), unit: 'ns' },
      {
        what: '',
        name: 'engine code and tables',
        value: median(found.map((round) => round[at + 1]?.ns ?? 0)),
        unit: 'ns',
        ratio: [median(ratios), ratios[0] ?? 0, ratios.at(-1) ?? 0],
        goal: { most: 1, of: 'ratio' },
      },
    ];
  };
  return [
    ...lines('cold start to the first answer, all flaws', 0),
    ...lines('cold start to the first answer, one flaw', 2),
  ];
};
