import { z } from 'zod';
import {
  named,
  off,
  type Said,
  type SaysOf,
  saidHandsOff,
  sentenceShape,
  sentencesOf,
  told,
} from './sentences.ts';

/** What stands in the place of every word on sanding, where a film is never sanded as it is. */
const unsanded = {
  soft: off('Dry to the touch, and not ready for the next coat.'),
  ready: told('While the next coat holds on it as it is.'),
  late: told('Once a coat may hold on a dulled film alone.'),
  stop: told('The same, in large.'),
  due: told('The same in a few words, behind the name of the piece.'),
  film: told('On a card and at the steps of a repair, of the film that lies there.'),
};

/** Every sentence of the clock. One row says the same on the clock, on a card, in a reminder and in a plan. */
const CLOCK_WORDS = {
  lead: unsanded,
  'two-part': {
    ...unsanded,
    perhaps: told('Beside every word on sanding, where nobody has said what was mixed in.'),
  },
  thin: {
    ready: told('Of a thin film, while the next coat holds on it as it is.'),
    late: told('Of a thin film that has to be dulled.'),
  },
  late: {
    always: told('A coat has to be dulled, however early the next one comes.'),
    perhaps: told('It may have to be dulled.'),
    surely: told('It has to be dulled.'),
  },
  thick: {
    enough: told('Of a film that bears no further coat, in large.'),
    why: told('Why it bears none.', 'most'),
  },
  'wipe-off': {
    by: told('Of a finish that is wiped off, in large.', 'by'),
    how: told('How, and from when on.', 'from'),
    cloths: told('What is done with the cloths.'),
    next: named('Until when hands are off once it is wiped.', 'late'),
    due: named('In a few words, behind the name of the piece.', 'by'),
  },
  wax: {
    wipe: told('Of a wax that was just laid, in large.'),
    'wipe-how': told('How, and when it is dull.', 'dull'),
    'hands-off': off('While hands are off it.'),
    buff: told('Once it is dull, in large.'),
    'buff-how': told('How.'),
    due: named('In a few words, behind the name of the piece.', 'from'),
    ring: named('The title of its reminder.'),
    'ring-how': told('What to do when that rings.'),
  },
  'no-time': {
    verdict: off('No time can be told, in large.'),
    move: off('The air is to blame: where the piece goes.'),
    flame: off('What is minded while it is warmed.'),
    anew: off('How its time is counted then.'),
    rests: off('The coldest night is to blame, or dries nothing.', 'degrees'),
    warmer: off('Where the piece goes before such a night.'),
    cold: off('What a film may be that was cold while it set.'),
    'now-warm': named('On the button that counts anew: it was too cold.'),
    'now-right': named('The same, of any other air.'),
    due: named('In a few words, behind the name of the piece.'),
  },
  'hands-off': {
    verdict: off('Of a film that is wet or setting, in large.'),
    next: off('What comes once it is dry to the touch.'),
    due: named('In a few words, behind the name of the piece.', 'late'),
  },
  soft: {
    verdict: off('Dry to the touch, and not ready for the next coat, in large.'),
    inside: off('Why, of a film that bears no further coat.'),
    sanded: off('Why, of a film that is sanded.'),
    buffed: off('Why, of a finish that is buffed.'),
    due: named('In a few words, behind the name of the piece.', 'late'),
  },
  ready: {
    sand: named('Ready for the next coat, in large.'),
    'sand-until': named('The same, where there is an end to it.', 'until'),
    'sand-later': told('What holds after that end.'),
    'sand-late': told('After that end, in large.'),
    coat: named('Of a thin film, in large.'),
    'coat-until': named('The same, where there is an end to it.', 'until'),
    'coat-later': told('What holds after that end.'),
    'coat-late': told('After that end, in large.'),
    unsanded: named('Of a film that is never sanded as it is, in large.'),
    'unsanded-until': named('The same, where there is an end to it.', 'until'),
    buff: named('Of a finish that is buffed, in large.'),
    'buff-how': told('How.'),
    due: named('In a few words, behind the name of the piece.'),
    'due-until': named('The same, where there is an end to it.', 'until'),
  },
  closed: {
    before: told('While a coat goes on before the hours in which none does: how.'),
    over: told('The same: when that ends, and comes again.', 'again'),
    verdict: told('In those hours, in large.'),
    why: told('Why.'),
    soon: off('Before it is ready at all: that the time for a coat is short.', 'until', 'again'),
    ring: named('The title of its reminder, when the time begins.'),
    'ring-how': told('What that means.'),
  },
  cure: {
    leave: named('Nothing is left to do but to wait, in large.'),
    'leave-thick': named('The same as a sentence, where the film bears no further coat.'),
    full: named('When it is fully cured.', 'cure'),
    last: named('Of the last coat.', 'use', 'cure'),
    'last-used': named('Of the last coat, once it bears light use.', 'cure'),
    cured: named('It is fully cured, in large.'),
    'cured-why': named('What that means.'),
    'due-use': named('In a few words, behind the name of the piece: light use.', 'late'),
    'due-cure': named('The same: fully cured.', 'late'),
    due: named('The same, once it is.'),
  },
  flaw: {
    open: named('A flaw is open on the card of the piece, in large.'),
    'open-why': told('What that means.'),
    repaired: named('Its repair is noted, in large.'),
    'repaired-why': named('Why it is asked after.'),
    'by-clock': named('What the clock says of the coat all the same.', 'verdict'),
    due: named('In a few words, behind the name of the piece.'),
  },
  future: {
    verdict: named('A coat that is laid later than now, in large.'),
    why: named('What is wrong, and what to do.', 'laid', 'now'),
  },
  rings: {
    touch: named('The title of a reminder: dry to the touch.'),
    'touch-how': off('What to do when that rings.'),
    sand: named('The title: ready to be sanded.'),
    'sand-how': told('How that is tried.'),
    coat: named('The title, of a film that is not sanded whole.'),
    buff: named('The title, of a finish that is buffed.'),
    'buff-how': told('How that is tried.'),
    late: named('The title: what holds from now on.', 'what'),
    'late-sand': told('What that is: it is sanded.'),
    'late-dull': told('What that is, of a thin film.'),
    'late-why': told('Why.'),
    use: named('The title: light use.'),
    'use-how': told('What that is.'),
    cure: named('The title: fully cured.'),
    'cure-how': named('What that means.'),
  },
  film: {
    label: named('How the film of a coat on a card is known: its can says how far it goes.'),
    amount: named('The same: by what went on.'),
    tool: named('The same: by its tool.'),
    usual: named('The same: by nothing but its product.'),
    nothing: named('It is not known.'),
    solids: named('Behind it, where the can tells its solids.'),
    none: named('Of a card without a coat.'),
    coats: named('Of a card of whose coats no film is known.', 'coats'),
    total: named('Of any other: the film in all.', 'coats', 'film'),
    'not-counted': named('Behind it, where some is not known.', 'coats'),
    supposed: named('Behind it, where some is only supposed.', 'coats'),
  },
  device: {
    unset: named('The clock of the device was never set.', 'now'),
    back: named('It has gone back.', 'seen'),
    ahead: named('It was not read for long.', 'seen', 'now'),
  },
  form: {
    'no-time': named('No time is given.'),
    ahead: named('The time is yet to come.', 'laid', 'now'),
    old: named('It is too long ago.', 'days'),
    number: named('The number of the coat.', 'most'),
    amount: named('More or less than a coat can be.'),
  },
  weather: {
    'near-dew-point': told(
      'The coldest surface is warmer than the dew point by too little.',
      'gap',
      'wanted',
    ),
    'below-dew-point': told('It is colder than the dew point.', 'gap'),
    'solvent-gap': told(
      'Of fast solvents: the air is warmer than the dew point by too little.',
      'gap',
      'wanted',
    ),
    'too-cold': told('Air or piece.', 'is', 'wanted'),
    'too-hot': told('Air or piece.', 'is', 'wanted'),
    'too-humid': told('The air.', 'is', 'wanted'),
    'too-dry': told('The air.', 'is', 'wanted'),
    'below-film-formation': told('Droplets may not become a film.', 'is', 'wanted'),
    'film-chills': told('The wet film cools itself below that.', 'is', 'wanted'),
    'warming-up': told('The piece becomes warmer.'),
    'in-sun': told('The sun is on the piece.'),
  },
  'weather-before': {
    wait: told('What to do before a coat is laid, where the weather is a no.'),
    care: told('The same, where it calls for care.'),
    'warming-up': told('The same, where the piece becomes warmer.'),
    'in-sun': told('The same, in the sun.'),
  },
  'weather-while': {
    'in-sun': off('What to do while a coat dries in the sun.'),
    room: off('The same, in any other weather.'),
  },
  range: {
    one: named('Why a time is a range.', 'why'),
    more: named('The same, with more than one reason.', 'some', 'last'),
    'product-varies': told('A reason, as the end of a sentence: so is the product.'),
    'label-range': told('The same: so is the label.'),
    weather: told('The same: the air is another one.'),
    'label-in-warmth': told('The same: it is warmer than the label has it.'),
    'thin-film': told('The same.'),
    'thick-film': told('The same.'),
    'cold-spells': told('The same: it dried at no pace that is known.'),
    'coat-below': told('The same: what lies below.'),
  },
  can: {
    far: named('A time that no can of this kind has.', 'product', 'moment', 'usual', 'typed'),
    'in-its-air': named('The air of the can, where that is told.', 'air'),
    'in-usual-air': named('The same where it is not.', 'air'),
    become: named('What a range of the can becomes here.', 'can', 'where', 'here', 'by'),
    becomes: named('What one time of the can becomes here.', 'can', 'where', 'here', 'by'),
    'by-air': named('By what: the air.'),
    'by-film': named('By what: the film alone.'),
    same: named('A time of the can that holds here as it is.', 'can'),
  },
} satisfies Readonly<Record<string, Readonly<Record<string, Said>>>>;

/** The sentences of the clock by group and id, as the engine says them. */
export type ClockWords = SaysOf<typeof CLOCK_WORDS>;

/** content/clock.yaml: every sentence of the clock; what tells what is so, or what hands do, with its ground. */
export const ClockTable = z.strictObject(sentenceShape(CLOCK_WORDS));
export type ClockTable = z.infer<typeof ClockTable>;

export const SAID_HANDS_OFF = saidHandsOff(CLOCK_WORDS);

/** The sentences of a table alone. */
export const clockWordsOf = (table: ClockTable): ClockWords => sentencesOf(CLOCK_WORDS, table);
