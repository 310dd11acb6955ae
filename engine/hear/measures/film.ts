import type { HeardFact } from '../words/heard.ts';
import { spanOf } from '../words/reading.ts';
import { PLAINLY } from '../words/sure.ts';

const MICROMETERS_A_MIL = 25.4;
const THICK = /(\d{1,3}(?:\.\d+)?)\s*(mils?|microns?|micrometers?|µm|um)\b/gi;
/** What tells that it is the dry film; a wet one shrinks by what no text tells. */
const IS_DRY = /\b(?:dry|dried|cured|film|build|built|thick(?:ness)?|mic['’]?d|micrometer|gauge)\b/i;
const IS_WET = /\bwet\b/i;
const EITHER_WAY = 0.1;

/** "3 mils dry after four coats": how thick the dry film is. */
export const filmOf = (text: string): HeardFact[] =>
  [...text.matchAll(THICK)].slice(-1).flatMap((match): HeardFact[] => {
    const near = text.slice(Math.max(0, match.index - 40), match.index + match[0].length + 30);
    if (!IS_DRY.test(near) || IS_WET.test(near)) return [];
    const value = Number(match[1]) * (/^mil/i.test(match[2] ?? '') ? MICROMETERS_A_MIL : 1);
    if (value > 2000) return [];
    const range: [number, number] = [value * (1 - EITHER_WAY), value * (1 + EITHER_WAY)];
    return [{ fact: 'film-micrometers', value, range, sure: PLAINLY, rests: [spanOf(match)], against: [] }];
  });
