import { slips } from '../../find/slips.ts';
import type { Lexicon } from './lexicon.ts';

/** So many slips: "degres", "humidty", "celcius". */
const NEAR = 1.3;

/** The text with the words of the air put right where they are nearly written, every letter else where it stood. */
export const nearUnits = (text: string, airUnits: Lexicon['airUnits']): string => {
  const units = Object.entries(airUnits);
  const begins = new Set(units.map(([unit]) => unit.charAt(0)));
  return text.replace(/[a-z]{5,12}/gi, (typed) => {
    // Most words begin with the letter of none.
    if (!begins.has(typed.charAt(0).toLowerCase())) return typed;
    const word = typed.toLowerCase();
    const meant = units.find(
      ([unit]) =>
        word !== unit &&
        word[0] === unit[0] &&
        // A letter more or less is a slip of its own, of half a price at the least.
        Math.abs(word.length - unit.length) <= 2 &&
        slips(word, unit) <= NEAR,
    );
    return meant && word !== 'degree' ? meant[1].padEnd(typed.length) : typed;
  });
};
