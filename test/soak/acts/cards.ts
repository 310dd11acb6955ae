/** Job cards: made, written, coated, shown to someone, copied, taken away and brought back. */
import { readFileSync } from 'node:fs';
import { type Act, be, between, choose, oneOf, tap, type as typeIn, type User, unfold } from '../user.ts';

const JOBS = '/jobs/';
const LAY = '.lay-coat form';
/** So many stand on the shelf before one has to go. */
const MOST = 8;
const ABOUT = ['kind', 'base', 'tone', 'age', 'product', 'sheen', 'wear', 'sealer', 'tool'];
/** One gray pixel. */
const PIXEL = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==',
  'base64',
);

const toList = async (user: User): Promise<void> => {
  await be(user, JOBS);
  await user.page.evaluate(() => {
    location.hash = '';
  });
  await user.page.locator('[data-part=view] > :is(.lead, .go)').first().waitFor({ timeout: 10_000 });
};

/** Opens one of the cards, where none is open. */
const openCard = async (user: User): Promise<boolean> => {
  if (new URL(user.page.url()).hash.startsWith('#card-') && user.page.url().includes(JOBS)) return true;
  await toList(user);
  return tap(user, '.cards a');
};

const make = async (user: User): Promise<boolean> => {
  await toList(user);
  await user.page.locator('[data-part=view] .acts').first().waitFor();
  if ((await user.page.locator('.cards > li').count()) >= MOST) return false;
  await tap(user, 'a[href="#new"]');
  await user.page.locator('.about [name=name]').waitFor();
  await typeIn(user, '.about', 'name', `Piece ${between(user, 1, 99)}`);
  await unfold(user, '.about details');
  for (const name of ABOUT) await choose(user, '.about', name);
  return tap(user, '.about [type=submit]');
};

/** One tap on an open card. */
const onCard = (name: string, weight: number, selector: string, text?: RegExp): Act => ({
  name,
  weight,
  on: JOBS,
  run: async (user) => (await openCard(user)) && tap(user, selector, text),
});
const ACTS = '.card-acts button';
/** One tap below the fold of paper and files. */
const onFold = (name: string, weight: number, text: RegExp): Act => ({
  name,
  weight,
  on: JOBS,
  run: async (user) => {
    if (!(await openCard(user))) return false;
    await unfold(user, '.files');
    return tap(user, ACTS, text);
  },
});

const lay = async (user: User): Promise<boolean> => {
  if (!(await openCard(user))) return false;
  if (!(await tap(user, '.main-acts button', /coat/i))) return false;
  await user.page.locator(LAY).waitFor();
  if (user.dice() < 0.5) await choose(user, LAY, 'product');
  await choose(user, LAY, 'when');
  return tap(user, `${LAY} [type=submit]`);
};

const correct = async (user: User): Promise<boolean> => {
  if (!(await openCard(user)) || !(await tap(user, '[data-mark=correct]'))) return false;
  await user.page.locator(LAY).waitFor();
  await typeIn(user, LAY, 'air', String(between(user, 50, 90)));
  return tap(user, user.dice() < 0.8 ? `${LAY} [type=submit]` : '.leave-it');
};

const exported = async (user: User): Promise<boolean> => {
  await toList(user);
  const coming = user.page.waitForEvent('download', { timeout: 8000 }).catch(() => undefined);
  if (!(await tap(user, 'main .acts button', /^Save all as a file/))) return false;
  user.kept.file = (await (await coming)?.path()) ?? user.kept.file;
  return true;
};

const imported = async (user: User): Promise<boolean> => {
  if (!user.kept.file) return false;
  await toList(user);
  await user.page.locator('.file input').setInputFiles({
    name: 'cards.json',
    mimeType: 'application/json',
    buffer: readFileSync(user.kept.file),
  });
  await user.page.locator('[data-part=said] button').first().waitFor();
  return tap(user, '[data-part=said] button');
};

const photo = async (user: User): Promise<boolean> => {
  if (!(await openCard(user))) return false;
  const field = user.page.locator('.lists .file input');
  if (!(await field.count()) || (await user.page.locator('.photos > li').count()) > 3) return false;
  await field.setInputFiles({ name: 'flaw.png', mimeType: 'image/png', buffer: PIXEL });
  return true;
};

export const cards: readonly Act[] = [
  { name: 'make a card', weight: 3, on: JOBS, run: make },
  { name: 'open a card', weight: 4, on: JOBS, run: openCard },
  { name: 'lay a coat on a card', weight: 5, on: JOBS, run: lay },
  { name: 'correct a coat', weight: 3, on: JOBS, run: correct },
  onCard('take something off', 3, '.lists button', /^Take it off the card$/),
  onCard('take a photo away', 1, '.photos button', /away/),
  { name: 'put it back', weight: 4, on: JOBS, run: (user) => tap(user, '[data-part=said] button') },
  { name: 'answer a question', weight: 6, on: JOBS, run: (user) => tap(user, 'dialog[open] button') },
  {
    name: 'look wrong',
    weight: 2,
    run: async (user) => (await openCard(user)) && tap(user, '.main-acts button', /looks wrong/),
  },
  { name: 'a flaw again', weight: 1, run: async (user) => (await openCard(user)) && tap(user, '.found a') },
  onCard('settle a flaw', 2, '.found button', /ettled/),
  onCard('last coat', 1, ACTS, /last coat|One more coat/),
  onCard('hand over', 1, ACTS, /anded over/),
  onCard('another like it', 1, ACTS, /^Make a card like/),
  onFold('save a card', 1, /^Save as a file/),
  onFold('delete a card', 1.5, /^Delete this card/),
  {
    name: 'care card',
    weight: 1,
    on: JOBS,
    run: async (user) => (await openCard(user)) && tap(user, '.card-acts a[href*="#care-"]'),
  },
  {
    name: 'edit the piece',
    weight: 3,
    on: JOBS,
    run: async (user) => {
      if (!(await openCard(user))) return false;
      await unfold(user, '.piece, .piece .more');
      return choose(user, '.about', oneOf(user, ABOUT) ?? 'kind');
    },
  },
  {
    name: 'write a note',
    weight: 2,
    on: JOBS,
    run: async (user) => {
      if (!(await openCard(user))) return false;
      const notes = user.page.locator('#job-notes').filter({ visible: true });
      if (!(await notes.count())) return false;
      await notes.fill(`Note ${between(user, 1, 999)}. `.repeat(between(user, 1, 20)));
      await notes.blur();
      return true;
    },
  },
  { name: 'add a photo', weight: 1, on: JOBS, run: photo },
  { name: 'save all', weight: 1, on: JOBS, run: exported },
  { name: 'bring cards in', weight: 1.5, on: JOBS, run: imported },
];
