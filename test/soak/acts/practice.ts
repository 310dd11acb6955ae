/** Boards to practise on: whatever can be tapped there. */
import { type Act, be, tap } from '../user.ts';

const PRACTICE = '/learn/practice/';

export const practice: readonly Act[] = [
  {
    name: 'practise',
    weight: 4,
    on: PRACTICE,
    run: async (user) => {
      await be(user, PRACTICE);
      return tap(user, 'main button:enabled', /^(?!.*[Pp]rint)/);
    },
  },
];
