/** Stories that people told, whole and cut anywhere, on the first page and on the one that listens. */
import { readFileSync } from 'node:fs';
import { type Act, be, between, oneOf, tap, type User } from '../user.ts';

/** The open posts alone: the sealed ones are for the score. */
const posts = readFileSync('test/words/posts.open.jsonl', 'utf8')
  .split('\n')
  .filter(Boolean)
  .map((line) => (JSON.parse(line) as { readonly text: string }).text);

const story = (user: User): string => {
  const text = oneOf(user, posts) ?? '';
  if (user.dice() < 0.5) return text;
  const from = between(user, 0, text.length - 1);
  return text.slice(from, from + between(user, 1, 300));
};

const tell = async (user: User): Promise<boolean> => {
  await be(user, '/tell/');
  const field = user.page.locator('#say');
  await field.waitFor({ state: 'attached' });
  if (!(await field.isVisible())) await tap(user, 'hd-tell .told-line button', /^Change$/);
  await field.fill(story(user), { timeout: 4000 });
  return tap(user, 'hd-tell [type=submit]');
};

export const stories: readonly Act[] = [
  {
    name: 'tell at home',
    weight: 3,
    run: async (user) => {
      await be(user, '/');
      await user.page.locator('main [name=q]').fill(story(user).slice(0, 400));
      return tap(user, 'main hd-search [type=submit]');
    },
  },
  { name: 'tell', weight: 6, on: '/tell/', run: tell },
  { name: 'answer what is asked', weight: 5, on: '/tell/', run: (user) => tap(user, '.understood button') },
  { name: 'start anew', weight: 1, on: '/tell/', run: (user) => tap(user, 'hd-tell .say button', /anew/) },
  {
    name: 'search',
    weight: 3,
    on: '/search/',
    run: async (user) => {
      await be(user, '/search/');
      await user.page.locator('main [name=q]').fill(story(user).slice(0, 80));
      return true;
    },
  },
];
