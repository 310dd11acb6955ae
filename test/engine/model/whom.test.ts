/** Whom a text names by the number. */
import { expect, it } from 'vitest';
import { numbersIn } from '#engine/model/whom.ts';

it.each<[string, readonly string[]]>([
  ['Call 911 in the US, or Poison Help, 1-800-222-1222.', ['emergency', 'poison']],
  ['Call the fire department, 911 in the US.', ['emergency']],
  ['An animal poison line, in the US 1-888-426-4435.', ['vet']],
  ['Call the emergency number of your country.', []],
  ['Lay 9110 cloths flat.', []],
  ['Part 5-911, or 911-5.', []],
  ['1-800-222-12223', []],
])('%s', (text, whom) => expect(numbersIn(text)).toEqual(whom));
