import type { Stage } from '../model/stage.ts';
import { orderedIn } from './hazard-words.ts';

/** Orders of a touch: what hands do to a film. A verb that turns up in a text and is missing is added here. */
const TOUCH = [
  'abrade|absorb|bend|blot|blow|brush|buff|burnish|chip|comb|crush|dab|dig|drag|ease|even out',
  'fan|feather|fill|flatten|fold|grind|hook|knock|level|lift|mash|massage|mop|nick|nudge|pat',
  'peel|pick|pierce|pinch|pluck|poke|press|prick|prise|prod|pry|pull|push|rake|recoat|roll|rub',
  'sand|scour|scrape|scratch|scrub|scuff|shave|skim|slice|slide|smooth|soak|spread|squash',
  'squeeze|straighten|strip|stroke|swab|sweep|tack|tamp|tease|thumb|tidy|touch|trim|tuck|tweeze',
  'vacuum|wash|wick|wipe',
].join('|');
/** Words that are a thing as often as an order: an order where something is named that it is done to. */
const OR_A_THING = [
  'clean|coat|cut|dust|file|fish|hold|lay|pad|paint|plane|polish|pop|run|spray|tap|thin|tip|wet',
  'work',
].join('|');
const TO_WHAT =
  '(?:it|them|this|that|these|those|the|all|any|a|an|your|each|every|off|out|down|over|once|lightly)';
/** Orders that only what is taken, or what it is done with, tells. */
const TAKEN = [
  '(?:take|get) (?:it|them|this|that|(?:the|each|every|any) [\\w -]+?) (?:out|up)\\b',
  'take (?:off )?the (?:tape|skin|drip|lump|nib)s?\\b',
  'use (?:a|an|the|your) (?:[\\w-]+ )?(?:finger|fingertip|thumb|cloth|rag|brush|roller|card|knife|blade|tweezers)\\b',
  'give (?:it|them|this|the [\\w-]+|each [\\w-]+) (?:a|an|one|another) (?:[\\w-]+ )?(?:wipe|rub|stroke|brush|press|pass|buff|tap|push|pull)\\b',
  '(?:heat|warm) (?:it|them|the (?:film|coat|skin|spot|mark|edge|lip|run|drip))\\b',
];

/** Words that stand before an order and leave it one. */
const BEFORE =
  /^(?:(?:then|now|next|so|and|but|or|first|just|only|at once|instead|also|please|always|again|quickly|\w+ly)[ ,]+|you (?:can|may|should|must|could|might|need to|have to) |it is (?:fine|safe|best|right|all right) to |(?:try to|be sure to|feel free to|go back and|go on and|go ahead and) )+/i;

/** Words of a time to come: the film is another by then. */
const LATER =
  /\b(?:once|when|until|tomorrow|later|next time|overnight|days?|weeks?|months?|hard|hardened|dry|dried|cured)\b/i;

/** Orders of a cloth or paper that takes up what lies on top. */
const CLOTH = ['absorb', 'blot', 'dab', 'mop', 'soak', 'swab', 'wick', 'wipe'];
/** What a spill bears on a film that is dry to the touch, straight up; a wet or setting film bears nothing. */
const BLOT = ['absorb', 'blot', 'soak'];

/**
 * The touches that a film bears at a stage though it is left alone. Oil and wax (`wiped`) bear a cloth but while they
 * set.
 */
export const bornBy = (stage: Stage, wiped: boolean): readonly string[] => {
  if (stage === 'setting') return [];
  if (wiped) return CLOTH;
  return stage === 'wet' ? [] : BLOT;
};

const ORDER = new RegExp(
  `^(?:(${TOUCH})\\b|(?:${OR_A_THING}) ${TO_WHAT}\\b|${TAKEN.join('|')})(?![-’'])`,
  'i',
);

/** What a hand is told to take to the film, whatever the verb. */
const WITH_TOOL =
  /\bwith (?:a|an|the|your|one) (?:[\w-]+,? ){0,2}(?:finger|fingertip|fingernail|thumb|hand|palm|cloth|rag|towel|sponge|brush|roller|pad|card|knife|blade|scraper|spatula|tweezers|pin|needle|toothpick|stick|nail|paper|swab)\b/i;

/**
 * The order of a touch in a text, or undefined. A sentence that begins with one is an order whatever follows; further
 * clauses of it are, unless the sentence tells of a time to come. What is told not to be done is none.
 */
export const touchOrdered = (text: string, born: readonly string[] = []): string | undefined => {
  for (const sentence of text.split(/[.;:!?]+\s*/)) {
    const waits = LATER.test(sentence);
    for (const [at, clause] of orderedIn(sentence)
      .split(/,\s*|\s+(?=(?:and|but|then)\s)/)
      .entries()) {
      if (at > 0 && waits) break;
      const order = clause.trim().replace(BEFORE, '');
      const found = ORDER.exec(order);
      if (!found && !waits && WITH_TOOL.test(order)) return order.split(/\s+/).slice(0, 5).join(' ');
      if (found && !born.includes(found[1]?.toLowerCase() ?? ''))
        return order.split(/\s+/).slice(0, 5).join(' ');
    }
  }
  return undefined;
};

/** The same of when to look again: what is told of a time to come is no order of now. */
export const touchAgain = (text: string, born: readonly string[] = []): string | undefined =>
  LATER.test(text) ? undefined : touchOrdered(text, born);
