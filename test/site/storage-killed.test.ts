/** Tabs that die while they write to the store of the job cards. */
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { summaryOf } from '#engine/jobs/summary.ts';
import { readCard } from '#engine/model/read-card.ts';
import { openPage, withoutPictures } from './browser.ts';
import { cardsIn, JOBS, makeCard, storeCode, summariesIn } from './jobs-hands.ts';

withoutPictures();

/** A page of the site that weighs next to nothing. */
const BARE = '/data/jobs.schema.json';

type Store = typeof import('../../site/client/jobs/store/index.ts');
type Acked = (count: number) => void;

/** Writes without end; tells each change once the store has said that it is saved. */
const WRITE = async ({ id, from }: { id: string; from: number }) => {
  const { store, acked } = window as unknown as { store: Store; acked: Acked };
  const read = await store.readOne(id);
  let seen = read.kind === 'card' ? read.card : undefined;
  for (let count = from + 1; seen; count++) {
    const notes = `${count} `.repeat(700).slice(0, 4000);
    const outcome = await store.changeCard(seen, (card) => ({ ...card, name: `Piece ${count}`, notes }));
    seen = outcome.kind === 'saved' ? outcome.card : undefined;
    if (seen) acked(count);
  }
};

/** The same by hand: changes the name on the page over and over, and tells each that the page shows as saved. */
const TYPE = ({ from }: { id: string; from: number }) => {
  const name = document.querySelector<HTMLInputElement>('.about [name=name]');
  const state = document.querySelector('[data-part=view] [role=status]');
  const { acked } = window as unknown as { acked: Acked };
  if (!name || !state) return;
  let count = from;
  const next = () => {
    count += 1;
    name.value = `Piece ${count}`;
    name.dispatchEvent(new Event('change', { bubbles: true }));
  };
  new MutationObserver(() => {
    if (!state.textContent?.startsWith('Saved')) return;
    acked(count);
    next();
  }).observe(state, { childList: true, characterData: true, subtree: true });
  next();
};

const countIn = (name: string | undefined): number =>
  Number(/^Piece (\d+)$/.exec(name ?? '')?.[1] ?? Number.NaN);

const die = async (tab: Page, hard: boolean): Promise<void> => {
  if (hard) {
    const client = await tab.context().newCDPSession(tab);
    const crashed = tab.waitForEvent('crash');
    client.send('Page.crash').catch(() => undefined);
    await crashed;
  }
  await tab.close();
};

type Tally = { kills: number; acknowledged: number; lost: number; halves: number };
/** How a tab is opened and set to write. */
type Way = {
  readonly open: (tab: Page, id: string) => Promise<unknown>;
  readonly write: typeof WRITE | typeof TYPE;
};

/** One browser profile whose tab is killed while it writes, again and again. */
const killing = async (kills: number, hand: number, tally: Tally, way: Way): Promise<void> => {
  const opened = await openPage();
  const context = opened.page.context();
  const id = await makeCard(opened.page, 'Piece 0');
  let [last, told] = [0, 0];
  let heard = () => {};
  await context.exposeBinding('acked', (_source, count: number) => {
    told = Math.max(told, count);
    if (told > last) heard();
  });
  let tab = await context.newPage();
  await opened.page.close();
  await way.open(tab, id);
  for (let kill = 0; kill < kills; kill++) {
    const first = new Promise<void>((done) => {
      heard = done;
    });
    tab.evaluate(way.write as typeof TYPE, { id, from: last }).catch(() => undefined);
    await first;
    await new Promise((wait) => setTimeout(wait, (kill * 37 + hand * 11) % 30));
    await die(tab, kill % 4 === 0);
    tally.kills += 1;
    tab = await context.newPage();
    await way.open(tab, id);
    const [cards, summaries] = [await cardsIn(tab), await summariesIn(tab)];
    const read = readCard(cards[0]);
    const sound =
      read.ok &&
      cards.length === 1 &&
      JSON.stringify(summaries[0]?.summary) === JSON.stringify(summaryOf(read.value)) &&
      (!read.value.notes || read.value.notes.startsWith(`${countIn(read.value.name)} `));
    if (!sound) tally.halves += 1;
    const now = countIn(cards[0]?.name);
    if (!(now >= told)) tally.lost += 1;
    tally.acknowledged += told - last;
    last = Math.max(now, told);
    told = last;
  }
  await opened.close();
};

/** Tabs that die: in each of two hands on a bare page, and through the page of a card. */
const BARE_KILLS = 96;
const HAND_KILLS = 8;
const KILLS = 2 * BARE_KILLS + HAND_KILLS;

it(`loses nothing that was told as saved, over ${KILLS} tabs killed while they write`, async () => {
  const code = await storeCode();
  const tally: Tally = { kills: 0, acknowledged: 0, lost: 0, halves: 0 };
  const began = performance.now();
  const bare: Way = {
    open: async (tab) => {
      await tab.goto(BARE);
      await tab.evaluate(code);
    },
    write: WRITE,
  };
  const byHand: Way = {
    open: async (tab, id) => {
      await tab.goto(`${JOBS}#card-${id}`);
      await tab.getByRole('button', { name: 'Lay a coat' }).waitFor();
    },
    write: TYPE,
  };
  await Promise.all([
    ...[0, 1].map((hand) => killing(BARE_KILLS, hand, tally, bare)),
    killing(HAND_KILLS, 3, tally, byHand),
  ]);
  console.log('kills', JSON.stringify({ ...tally, seconds: Math.round((performance.now() - began) / 1000) }));
  expect(tally).toMatchObject({ kills: KILLS, lost: 0, halves: 0 });
  expect(tally.acknowledged).toBeGreaterThanOrEqual(KILLS);
});
