/** The finishing schedule and the choice of a top coat, with whatever may be typed. */
import { type Act, be, between, choose, oneOf, tap, type as typeIn, type User, unfold } from '../user.ts';

const PLAN = '/schedule/';
const FORM = 'main form.lay';
const LISTS = [
  'preset',
  'base',
  'age',
  'tone',
  'wear',
  'trials',
  'both',
  'turned',
  'product',
  'sheen',
  'tool',
  'units',
  'sun',
  'days',
];
const NUMBERS = [
  'top-count',
  'top-long',
  'base-age',
  'can-coverage',
  'can-coats',
  'can-recoat',
  'air',
  'humidity',
  'night',
];
const TYPED = ['', '0', '1', '12', '50', '70', '400', '-3', '1,5', 'many'];

/** What stands in a form may be folded or behind the plan. */
const show = async (user: User): Promise<void> => {
  await be(user, PLAN);
  await user.page.locator(FORM).first().waitFor({ state: 'attached' });
  await unfold(user, 'main details:has(form.lay), main form.lay details');
};

const plan = async (user: User): Promise<boolean> => {
  await show(user);
  for (const name of LISTS) if (user.dice() < 0.4) await choose(user, FORM, name);
  await choose(user, FORM, 'age');
  for (const name of NUMBERS)
    if (user.dice() < 0.15) await typeIn(user, FORM, name, oneOf(user, TYPED) ?? '');
  return tap(user, `${FORM} [type=submit]`);
};

export const planning: readonly Act[] = [
  { name: 'plan', weight: 5, on: PLAN, run: plan },
  {
    name: 'plan by the usual',
    weight: 2,
    on: PLAN,
    run: async (user) => {
      await user.page.goto(PLAN);
      await user.page.evaluate(() => sessionStorage.clear());
      await user.page.reload();
      await show(user);
      await choose(user, FORM, 'product');
      await choose(user, FORM, 'age');
      await typeIn(user, FORM, 'promised', `2027-0${between(user, 1, 9)}-1${between(user, 0, 9)}`);
      return tap(user, `${FORM} [type=submit]`);
    },
  },
  {
    name: 'take the plan along',
    weight: 2,
    on: PLAN,
    run: (user) => tap(user, '.plan button', /Calendar|Table|Copy/),
  },
  { name: 'a card of the plan', weight: 1, run: (user) => tap(user, '.plan button', /job card/) },
  {
    name: 'another coat for the plan',
    weight: 2,
    on: PLAN,
    run: (user) => tap(user, '.plan button', /^Plan with|plan on/),
  },
  {
    name: 'which coat',
    weight: 3,
    on: '/which-coat/',
    run: async (user) => {
      await be(user, '/which-coat/');
      return choose(user, 'main form', oneOf(user, ['preset', 'base', 'tone', 'age', 'trials']) ?? 'base');
    },
  },
];
