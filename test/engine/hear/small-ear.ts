/** A small invented lexicon: a few phrases of each kind, so that every rule of hearing can be seen alone. Kinds of words are those of the content. */
import { hear } from '#engine/hear/hear.ts';
import type { Lexicon } from '#engine/hear/words/lexicon.ts';
import { mannerOf } from '#engine/hear/words/manner.ts';
import { type Ear, earOf, type Match, matchesIn } from '#engine/hear/words/match.ts';
import { stemOf, type Word, wordsIn } from '#engine/hear/words/words.ts';
import { hearing } from './hearing.ts';

const stems = (phrase: string) =>
  phrase
    .split(' ')
    .map((step) =>
      step
        .split('|')
        .map((one) => (one.startsWith('=') ? one : stemOf(one)))
        .join('|'),
    )
    .join(' ');
const sense = (name: string, ...phrases: readonly string[]): readonly [string, string] => [
  name,
  phrases.map(stems).join(','),
];

const LEXICON: Lexicon = {
  senses: [
    sense('fact family lacquer', 'lacquer', 'spray lacquer'),
    sense('fact family oil', 'oil', 'tung oil'),
    sense('fact family wax', 'wax'),
    sense('fact family shellac', 'shellac'),
    sense('among family oil-based|water-based', 'poly'),
    sense('fact base stain', 'oil stain', 'stain'),
    sense('fact base chalk-paint', 'chalk paint'),
    sense('fact base old-finish', 'old finish', 'refinishing'),
    sense('fact piece crib', 'crib'),
    sense('fact piece tabletop', 'table'),
    sense('fact age unknown', 'old'),
    sense('fact stage wet', 'wet', 'just brushed', 'still wet'),
    sense('fact stage setting', 'sticky', 'thumb dents'),
    sense('fact stage dry-to-touch', 'dry', 'dry touch'),
    sense('fact stage recoatable', 'hard', 'can sanded'),
    sense('fact stage cured', 'cured'),
    sense('fact overdue yes', 'never dried', 'still gummy'),
    sense('sign still-tacky yes', 'clings'),
    sense('sign came-in-use yes', 'mug ring'),
    sense('sign fine-when-first-dry yes', 'was fine'),
    sense('sign spirit-or-cleaner-on-it yes', 'degreaser'),
    sense('sign bare-wood-shows yes', 'went through'),
    sense('cue owned', 'grandmas'),
    sense('fact sheen gloss', 'gloss'),
    sense('fact sheen satin', 'satin'),
    sense('fact base bare-wood', 'bare wood'),
    sense('fact base latex-paint', 'latex'),
    sense('fact base-tone wood', 'oak'),
    sense('fact base-tone dark', 'dark'),
    sense('fact base-tone light', 'antique white', 'white'),
    sense('fact piece valuable', 'antique'),
    sense('fact applicator brush', 'brush'),
    sense('fact applicator aerosol', 'spray can'),
    sense('fact applicator spray-gun', 'gun'),
    sense('fact family wipe-on', 'wiped poly'),
    sense('times 8 12 16', 'overnight'),
    sense('times 16 24 36', 'yesterday'),
    sense('times 700 1400 2800', 'months'),
    sense('none', 'table salt'),
    sense('no-sign', 'bubble wrap'),
    sense('flaw runs|drips', 'drips', 'nose drips'),
    sense('flaw-alone runs|drips', '=runs'),
    sense('flaw peels', 'skin', 'comes off'),
    sense('whole', 'orange skin'),
    sense('sign round yes', 'bubbles', 'round dots'),
    sense('sign round no', 'smooth'),
    sense('sign soft yes', 'soft', 'nail dents', 'very soft edges'),
    sense('sign laid yes', 'laid thick'),
    sense('danger rags', 'oily rag', 'rag'),
    sense('danger heater', 'gas heater'),
    sense('danger flame', 'gas water heater'),
    sense('danger stripper', 'stripper legs', 'stripper'),
    sense('urgent rags 0', 'rag smokes'),
    sense('urgent rags 1', 'rag pile smokes', 'pile smokes'),
    sense('calm rags 1', 'in water'),
    sense('urgent licked 1', 'licked'),
    sense('urgent licked 0', 'dog licked'),
    sense('cue not-denying', 'not only'),
    sense('cue not-yet', 'want to', 'may', 'can i', 'plan', 'hope'),
    sense('cue feared', 'afraid', 'hope'),
    sense('cue is-over', 'went away', 'gone'),
    sense('cue other-layer', 'stain', 'primer'),
    sense('cue other-time', 'says'),
  ],
  spellings: { colour: 'color', laquer: 'lacquer' },
  oneSlip: 'lacquer,shellac',
  ofWork: 'laid',
  asksFor: [],
  wordings: hearing.lexicon.wordings,
  tables: {
    ...hearing.lexicon.tables,
    clock: { lead: 'On the clock:', page: 'page/clock' },
    waits: { lead: 'In the plan:', page: 'page/schedule' },
    coats: { lead: 'In the plan:', page: 'page/schedule' },
    layers: { lead: 'Of layers:', page: 'lesson/what-lies-below' },
    sanding: { lead: 'Of sanding:', page: 'lesson/sand-between-coats' },
    beside: [],
    window: {
      ...hearing.lexicon.tables.window,
      lead: 'By the can:',
      page: 'rule/hours-on-the-can',
      within: 'Within {within} or after {from}.',
      between: 'Not at {age}: within {within} or after {from}.',
      waited: 'After {from}.',
      'too-soon': 'Not at {age}: after {from}.',
    },
    ahead: { answer: 'It is a plan.', lead: 'In the plan:', page: 'page/schedule' },
    outside: { answer: 'Not in that air.', lead: 'Of air:', page: 'lesson/can-and-weather' },
    dew: {
      no: '{gap} above it: not yet.',
      yes: '{gap} above it: yes.',
      fast: 'More for lacquer.',
      lead: 'Of air:',
      page: 'lesson/garage-weather',
    },
    film: {
      leaves: '{wet} at {solids} leaves {dry}.',
      asks: '{dry} at {solids} is laid {wet}.',
      heavy: '{target} asks for {aim}: {share} over.',
      thin: '{target} asks for {aim}: {share} under.',
      fits: '{target} asks for {aim}: so it is.',
      lead: 'Of film:',
      page: 'lesson/thin-coats',
    },
    amount: {
      ...hearing.lexicon.tables.amount,
      covers: '{kinds} a coat.',
      rest: 'And more.',
      lead: 'In the plan:',
      page: 'page/schedule',
    },
    degrees: '{told} is {degrees}.',
    painted: 'Over dry paint.',
    air: 'in mild air.',
    can: 'The can wins.',
    unsaid: 'It hangs on the kind.',
    'wax-waits': 'Wax waits.',
    thin: 'Thin ones.',
    bare: 'Until then it stays bare.',
    powders: 'It must powder.',
    fits: 'Once it is hard.',
  },
  stillDrying: { answer: 'It is still drying.', lead: 'Where it stays so:' },
  reply: hearing.lexicon.reply,
  small: 'some,big,the',
  turns: 'but,because,so',
  kinds: hearing.lexicon.kinds,
  airUnits: {},
  not: 'not,no,never,without',
  otherTongue: '',
  below: 'over,under',
  onTop: 'with',
  laid: 'brushed,laid',
  ago: 'ago',
  was: 'was,were',
  numbers: {
    one: 1,
    two: 2,
    three: 3,
    four: 4,
    five: 5,
    half: 0.5,
    a: 1,
    an: 1,
    second: 2,
    third: 3,
    forty: 40,
    twenty: 20,
    first: 1,
    dozen: 12,
    hundred: 100,
  },
  units: {
    minute: 1 / 60,
    minutes: 1 / 60,
    min: 1 / 60,
    h: 1,
    hour: 1,
    hours: 1,
    day: 24,
    days: 24,
    week: 168,
    weeks: 168,
    month: 720,
    second: 1 / 3600,
  },
};

export const ear: Ear = earOf(LEXICON);
export const read = (
  text: string,
): { readonly words: readonly Word[]; readonly matches: readonly Match[] } => {
  const words = wordsIn(text, ear);
  return { words, matches: matchesIn(ear, words) };
};
export const mannerIn = (text: string) => {
  const { words, matches } = read(text);
  return { words, matches, manner: mannerOf(ear, words, matches) };
};
export const heardBySmall = (text: string) =>
  hear(
    {
      lexicon: LEXICON,
      dry: {},
      waits: {
        ...hearing.waits,
        kinds: {},
        below: [],
        over: [],
        coats: [],
        between: [],
        cans: [],
        onBase: [],
      },
    },
    text,
  );

const NUMBERS = 'one two three four five six seven eight nine ten eleven twelve'.split(' ');

const NTH = 'first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth'.split(' ');

/** The same ear, which counts to a dozen. */
export const counting: Ear = {
  ...ear,
  numbers: new Map<string, number>([
    ...NUMBERS.map((word, at): [string, number] => [word, at + 1]),
    ...NTH.map((word, at): [string, number] => [word, at + 1]),
    ['1st', 1],
    ['2nd', 2],
    ['3rd', 3],
    ['4th', 4],
    ['both', 2],
    ['dozen', 12],
    ['half', 0.5],
    ['a', 1],
    ['an', 1],
  ]),
};
