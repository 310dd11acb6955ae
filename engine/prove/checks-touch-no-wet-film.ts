import type { Issue } from '../faults/issue.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import { orderedIn } from './hazard-words.ts';
import { touchOrdered } from './touch-words.ts';

/**
 * Orders that bring something onto the surface: with the touches of a film, what only lies, marks or measures there.
 */
const ON_IT =
  /^(?:then |or |and )?(close a|cover|drag|feel (?:it|them|all|over|along|for|round|the)|draw|lay|mark|measure|press|put|set|warm)\b(?! (?:a |your )?(?:light|lamp|flashlight|question))/i;
/** What is looked along, held or moved beside it touches nothing. */
const LOOKS = /^(?:then |or |and )?(hold|run a light|look|fan)\b/i;
/** What is remembered or asked for is no order. */
const REMEMBERED = /^(think|ask|watch|did|was|is|does)\b/i;
/** What is touched is no wet film: it is dry, it never had the coat, or it is the can, the tool, glass or paper. */
const NO_FILM = [
  'uncoated|old spot|bare|no (?:top|new) coat|photo|dry (?:to the touch|film|spot)|(?:is|are) dry|quite wet',
  '(?:above|against) (?:the|it|each|one)|without touching|(?:from|of|on|with) the can\\b',
  'on (?:a )?(?:sheet of )?(?:white |dry )?(?:paper|glass|card|scrap)|over a sheet of glass|folded towel|(?:paper )?towel',
  'cup of water|the (?:tool|pad|stick|skin|thing|board)\\b|damp rag|over white paper|smear',
].join('|');
const OFF_THE_FILM = new RegExp(`\\b(?:${NO_FILM})`, 'i');

/** The order in a check that brings a hand or a thing onto a film which may be wet, or undefined. */
const touchIn = (text: string): string | undefined => {
  if (REMEMBERED.test(text)) return undefined;
  let isOff = false;
  for (const sentence of text.split(/[.;!?]+\s*/)) {
    // What is done next is done to the same thing.
    isOff = OFF_THE_FILM.test(sentence) || (isOff && /^then\b/i.test(sentence));
    if (isOff || REMEMBERED.test(sentence)) continue;
    for (const clause of orderedIn(sentence).split(/[,:]\s*|\s+(?=(?:and|but|then|or)\s)/)) {
      const order = clause.trim();
      if (LOOKS.test(order)) continue;
      const touch =
        touchOrdered(order) ?? (ON_IT.test(order) ? order.split(/\s+/).slice(0, 5).join(' ') : undefined);
      if (touch) return touch;
    }
  }
  return undefined;
};

/**
 * A question that is safe from wet on is answered without a touch: neither of its checks brings anything onto the film.
 */
export function* checksTouchNoWetFilm(known: Knowledge): Generator<Issue> {
  for (const question of known.questions) {
    if (question['safe-from'] !== 'wet' && question['safe-from'] !== 'setting') continue;
    for (const field of ['how', 'sure', 'on-the-piece'] as const) {
      const text = question[field] ?? '';
      const word = touchIn(text);
      if (word)
        yield { file: question.file, line: question.lineOf([field]), code: 'check-touches', text, word };
    }
  }
}
