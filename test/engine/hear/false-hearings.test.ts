/** Words that sound like a sign and tell of none, each beside the ones that do tell of it. Invented sentences. */
import { expect, it } from 'vitest';
import { sign } from './hearing.ts';

it.each([
  ['a white ring from a hot mug', 'cold-or-damp-while-drying', undefined],
  ['two mugs stood on the shellac', 'cold-or-damp-while-drying', undefined],
  ['it was a muggy evening as it dried', 'cold-or-damp-while-drying', 'yes'],
  ['I did not wipe off the excess oil', 'wipes-off-damp', undefined],
  ['we never wiped off what stood there', 'wipes-off-damp', undefined],
  ['it wipes off with a damp cloth', 'wipes-off-damp', 'yes'],
  ['the haze wont wipe off', 'wipes-off-damp', 'no'],
  ['should she rub it with oil', 'came-after-rubbing', undefined],
  ['do I rub it with ash or leave it', 'came-after-rubbing', undefined],
  ['I rubbed it with toothpaste and now it is dull', 'came-after-rubbing', 'yes'],
  ['a clear that wont go yellow on my desk', 'white-or-milky', undefined],
  ['which varnish doesnt turn amber or yellow', 'white-or-milky', undefined],
  ['a finish that never goes yellow', 'color-or-cloud', undefined],
  ['white haze in the clear', 'white-or-milky', 'yes'],
  ['it turned yellow in a month', 'color-or-cloud', 'yes'],
  ['shellac, then water based poly this morning', 'water-based-and-fresh', undefined],
  ['oil based stain below, water based clear an hour ago', 'water-based-and-fresh', undefined],
  ['there was a tablecloth on it', 'plastic-or-rubber-stood-there', undefined],
  ['she would lay a linen tablecloth', 'plastic-or-rubber-stood-there', undefined],
  ['a vinyl tablecloth lay on it', 'plastic-or-rubber-stood-there', 'yes'],
  ['can I wrap it in moving blankets', 'weave-or-print-pattern', undefined],
  ['may we pack them in moving blankets tomorrow', 'weave-or-print-pattern', undefined],
  ['prints from moving blankets', 'weave-or-print-pattern', 'yes'],
  ['front of the back and rear of it', 'will-be-seen', undefined],
  ['coated front and back', 'will-be-seen', undefined],
  ['a run on the drawer fronts', 'will-be-seen', 'yes'],
  ['how many coats', 'one-or-two-spots', undefined],
  ['the room was cool the whole time', 'one-or-two-spots', undefined],
])('%s: %s %s', (text, question, answer) => expect(sign(text, question)).toBe(answer));
