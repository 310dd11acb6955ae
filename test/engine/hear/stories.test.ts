/** What posts say, by class. Sentences of our own, invented; what each tells is plain from its words. */
import { describe, expect, it } from 'vitest';
import { SURE } from '#engine/hear.ts';
import { STAGES, type Stage } from '#engine/model/stage.ts';
import { fact } from './hearing.ts';

const taken = (text: string, name: string) => {
  const found = fact(text, name);
  return found && found.sure >= SURE ? found : undefined;
};

type Told = readonly [text: string, value: string | number | undefined];
const CLASSES: Readonly<Record<string, readonly Told[]>> = {
  // Which lies on top: what was laid last, not what was named last.
  family: [
    ['A coat of linseed oil, a day, then four coats of lacquer. Lacquer thinner took a drip off', 'lacquer'],
    ['Shellac first, back to bare wood, two coats of tung oil', 'oil'],
    ['sealed with a water clear', 'water-based'],
    ['the shellac sets with no breeze and the shellac drags', 'shellac'],
    ['I may have had too much oil on the pad, french polishing a box', 'shellac'],
    ['wiped oil stain on, then shellac', 'shellac'],
    ['water based lacquer on it, now the lacquer peels', 'water-lacquer'],
    ['I wiped on oil based poly', 'oil-based'],
    ['three coats of polyurethane (oil)', 'oil-based'],
    ['How can I get prints out of a shellac that I laid?', 'shellac'],
    ['How can I put shellac on it?', undefined],
    ['a matte clear', undefined],
    ['the wood went black from a waxy crayon', undefined],
  ],
  base: [
    ['Stripped and sanded the table, then poly', 'bare-wood'],
    ['set it on an unfinished box', 'bare-wood'],
    ['white chalk paint, and old furniture stain bled through', 'chalk-paint'],
    ['a water stain on the poly', undefined],
    ['the tape ripped it off down to bare wood', undefined],
    ['refinishing a rocker: stripper, then golden oak stain, then poly', 'stain'],
  ],
  'base-tone': [
    ['stained it dark, then poly', 'dark'],
    ['white chalk paint below', 'light'],
    ['dark wax on oak', 'wood'],
    ['a pin-size spot', undefined],
    ['painted oak doors', undefined],
  ],
  applicator: [
    ['a few coats of spray paint', 'aerosol'],
    ['a dense sponge roller', 'roller'],
    ['somebody used spray polish', undefined],
    ['a shoe brush did not help', undefined],
    ['sprayed it, and the spray can sputtered', 'aerosol'],
  ],
  sheen: [
    ['matte clear, and glossy paths where we wipe', 'matte'],
    ['semi-gloss poly', undefined],
    ['the flat parts are clear', undefined],
  ],
  age: [
    ['a dresser of the sixties or seventies', 'before-1993'],
    ['it is about 80 years old', 'before-1993'],
    ['temperatures in the sixties', undefined],
    ['teak sideboard, 60s', 'before-1993'],
    ['shop in the 60s', undefined],
    ['a pretty old bench', 'unknown'],
  ],
  'coat-number': [
    ['One coat of primer, two of paint', 2],
    ['two coats on the legs and four on the top', 4],
    ['three coats wanted, two on', 2],
    ['First and second coats good. After the third I see cracks', 3],
    ['Coats one and two fine, the fourth is dull', 4],
    ['one coat of oil, 3 of shellac', 3],
    ['on coat number four of shellac', 4],
    ['2 coats of oil stain, and today the first coat of poly', 1],
    ['it only lacks one final clear coat', undefined],
    ['how many coats for a table', undefined],
    ['two coats of white paint', 2],
    ['clear poly x2', 2],
    ['I rubbed in tung oil four times this week', 4],
    ['I put the gloss poly on, then I laid another coat', 2],
    ['the directions say three coats of poly', undefined],
    ['I usually lay three coats of poly', undefined],
    ['Five coats of lacquer, sanded it all off, then two coats', 2],
  ],
  'hours-since-coat': [
    ["It's been a month since I oiled it", 720],
    ['3 weeks in and the tung oil smells', 504],
    ['After 24h the second coat is tacky', 24],
    ['I did the last coat of poly on a Sunday. It is Wednesday', 72],
    ['Brushed poly on Sunday. Today is Wednesday', 72],
    ['Dark wax on Tuesday. It’s Saturday', 96],
    ['Sealed it with poly on Friday. Sunday it ran', 48],
    ['Waxed it about a week and a half ago', 252],
    ['Oil on a bench. On day five it is greasy', 114],
    ['coats a day apart, 3 weeks after the last one it peels', 504],
    ['24 hours till the next coat of poly', undefined],
    ['tape was on the poly for only four hours', undefined],
    ['five coats over two weeks', undefined],
    ['I set the bottle on our table. 15 minutes later there was a ring', undefined],
    ['a can of varnish I bought two years ago', undefined],
    ['varnished by a man with 21 years in business', undefined],
    ['I have used this poly for years', undefined],
    ['my 3 year old touched the varnish', undefined],
    ['laquer one day old', 24],
    ['let it dry overnight, then the poly went on. Two hours later it was dull', 2],
    ['the second coat went on 4 hours after the first', undefined],
    ['Shellac after twenty minutes again, and it has been overnight', 12],
    ['the poly on it is three weeks old today', 504],
    ['The pews were redone in 1998, gloss varnish', 9000],
    ['48hrs later still soft', 48],
    ['Sprayed poly, dry in 30 min. 2 hrs so far', 2],
    ['1 coat of spar varnish on Tues. Today, Wed, it wrinkled', 24],
    ['Waxed it, woke up to haze. Pouted for several weeks', 10],
    ['a gallon of varnish stood opened for a year, lumps in it', undefined],
  ],
  'air-celsius': [
    ['Room is cool, 62 or so', 16.7],
    ['shop between 55 and 70', 16.9],
    ['in the garage, about 85 and sticky out', 29.4],
    ['sanded with 80 in the warm shop', undefined],
    ['a frozen drip', undefined],
  ],
  'relative-humidity': [
    ['it is 80% most of the time, I run a dehumidifier', 0.8],
    ['drops like rain on the clear', undefined],
    ['a mug on the table', undefined],
    ['humidity is ordinary', undefined],
    ['humidity was in the nineties', 0.94],
  ],
  stage: [
    ['Just bought a nice old piano bench, it is dull', 'cured'],
    ['All my wooden furniture is getting sticky', 'cured'],
    ['A plant leaked on our oak dining table', 'cured'],
    ['the lid of a piano from 1956 has a cloudy streak', 'cured'],
    ['a hundred years old, my great aunt’s sideboard. Can I melt the cracks?', 'cured'],
    ['I thought it should be dry', undefined],
    ['is it dry enough?', undefined],
  ],
  overdue: [
    ['the poly never hardened', 'yes'],
    ['our worktop is permanently sticky', 'yes'],
    ['the coat of varnish of this morning never dried', undefined],
  ],
};

describe.each(Object.entries(CLASSES))('%s', (name, told) => {
  it.each(told)('%s: %s', (text, value) => {
    const found = taken(text, name);
    if (typeof value === 'number') expect(found?.value).toBeCloseTo(value, 1);
    else expect(found?.value).toBe(value);
  });
});

// A film taken drier than it is gets sanded or loaded too soon.
describe('the stage is never taken drier than the text allows', () => {
  it.each([
    ['It is getting sticky, should I brush it again?', 'setting'],
    ['second-hand table about 20 years old, unknown finish, sticky to press', 'dry-to-touch'],
    ['Six months on and the oil is sticky', 'dry-to-touch'],
    ['I have used this poly for years. On this table it is hazy', 'recoatable'],
    ['my 3 year old put a hand in the varnish', 'wet'],
    ["Friends' dresser, chalk paint, no sanding", 'recoatable'],
    ['Used up varnish that was in the garage since 2015', 'recoatable'],
    [
      'Stained one day, two coats of poly, the second has been drying nine days now and is tacky',
      'dry-to-touch',
    ],
    ['flakes dissolved a year ago in the jar, are they good?', 'wet'],
    ["my friend's table: she used hemp oil on it and it sticks", 'recoatable'],
    ["my mother's sideboard has runs in the new varnish", 'recoatable'],
    ['it just rolls up under the paper', 'setting'],
    ['Our dining table is cloudy since I went with water based', 'recoatable'],
    ['Bought a second-hand dresser and gave it a clear that yellowed', 'recoatable'],
    ['The wood dried in my shed for three years. Tung oil on it stays greasy', 'dry-to-touch'],
    ["We've had the chest for years and I did it in milk paint", 'recoatable'],
    ['In use for 10 minutes and it has a patch. Finished Sunday', 'recoatable'],
    ['Spilled alcohol while I was padding shellac', 'setting'],
    ['It was fully cured, or so I thought', 'wet'],
    ['How long until it dries? Once it dries I will sand', 'wet'],
    ['brushed poly an hour ago, it is still wet and sticky at the edge', 'wet'],
    ['An inherited table, a friend helped me lay poly', 'recoatable'],
    ['As I brushed it this morning the shellac turned white', 'setting'],
  ] as const)('%s: no drier than %s', (text, driest) => {
    const stage = taken(text, 'stage');
    expect(stage ? STAGES.indexOf(stage.value as Stage) : 0).toBeLessThanOrEqual(STAGES.indexOf(driest));
  });
});
