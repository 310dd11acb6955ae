import { slips } from '../find/slips.ts';

/** What measures the air, and a short form that is no longer than any slip of it. */
const UNITS: readonly (readonly [word: string, short: string])[] = [
  ['degrees', 'deg'],
  ['humidity', 'hum'],
  ['fahrenheit', 'f'],
  ['celsius', 'c'],
];
const BEGINS: ReadonlySet<string> = new Set(
  UNITS.flatMap(([unit]) => [unit.charAt(0), unit.charAt(0).toUpperCase()]),
);
/** So many slips: "degres", "humidty", "celcius". */
const NEAR = 1.3;

/** The text with the words of the air put right where they are nearly written, every letter else where it stood. */
export const nearUnits = (text: string): string =>
  text.replace(/[a-z]{5,12}/gi, (typed) => {
    // Most words begin with the letter of none.
    if (!BEGINS.has(typed[0] as string)) return typed;
    const word = typed.toLowerCase();
    const meant = UNITS.find(
      ([unit]) =>
        word !== unit &&
        word[0] === unit[0] &&
        // A letter more or less is a slip of its own, of half a price at the least.
        Math.abs(word.length - unit.length) <= 2 &&
        slips(word, unit) <= NEAR,
    );
    return meant && word !== 'degree' ? meant[1].padEnd(typed.length) : typed;
  });
