/** The coat clock: every finish, any air, the next coat, what is stopped and started again. */
import { type Act, be, between, choose, oneOf, tap, type as typeIn, type User, unfold } from '../user.ts';

const CLOCK = '/clock/';
const FORM = 'hd-coats form';
/** Invented names of pieces. */
const PIECES = ['', 'Chair', 'Navy dresser', 'Hall table', 'Crate', 'Blue door'];
const AIR = ['70', '64', '45', '95', '21', '', 'warm', '140'];
const HUMIDITY = ['50', '35', '80', '95', '', '130'];

const fill = async (user: User): Promise<void> => {
  await unfold(user, 'hd-coats details');
  await choose(user, FORM, 'product');
  await choose(user, FORM, 'when');
  await typeIn(user, FORM, 'ago', String(between(user, 0, 900)));
  await typeIn(user, FORM, 'air', oneOf(user, AIR) ?? '');
  await typeIn(user, FORM, 'humidity', oneOf(user, HUMIDITY) ?? '');
  await typeIn(user, FORM, 'piece', oneOf(user, PIECES) ?? '');
  for (const name of ['tool', 'sheen', 'tone']) if (user.dice() < 0.3) await choose(user, FORM, name);
  if (user.dice() < 0.2) await typeIn(user, FORM, 'label-touch', String(between(user, 0, 240)));
  if (user.dice() < 0.2) await typeIn(user, FORM, 'label-recoat', String(between(user, 0, 48)));
};

/** A coat is laid by the usual air half of the time: else most forms would be refused. */
const start = async (user: User): Promise<boolean> => {
  await be(user, CLOCK);
  await user.page.locator('hd-coats:not([hidden])').waitFor();
  await fill(user);
  if (user.dice() < 0.5) {
    await choose(user, FORM, 'product');
    await typeIn(user, FORM, 'air', '70');
    await typeIn(user, FORM, 'humidity', '50');
  }
  return tap(user, `${FORM} .go`);
};

const onClock = (name: string, weight: number, selector: string): Act => ({
  name,
  weight,
  on: CLOCK,
  run: (user) => tap(user, selector),
});

export const clock: readonly Act[] = [
  { name: 'lay a coat', weight: 6, on: CLOCK, run: start },
  { name: 'lay it after all', weight: 5, on: CLOCK, run: (user) => tap(user, '.asked [data-answer]') },
  {
    name: 'next coat',
    weight: 4,
    on: CLOCK,
    run: async (user) => (await tap(user, '[data-act=next]')) && tap(user, `${FORM} .go`),
  },
  onClock('stop a clock', 4, '[data-act=off]'),
  onClock('start it again', 3, '[data-act=again]'),
  onClock('count anew', 1, '[data-act=anew]'),
  onClock('look at this one', 2, '[data-act=look]'),
  onClock('reminders', 1, '[data-act=remind]'),
  onClock('step a field', 2, '.stepper button'),
  onClock('the clock is right', 1, '.trouble button'),
];
