/**
 * What saves first, where a message tells of harm that is under way or about to be done. All messages are invented; what
 * each reply must say first is what the sources of the rules ask for: a fire marshal on rags, poison centers on bleach and
 * on what was swallowed, the agencies on lead dust and on isocyanate, fire figures on vapor and water heaters.
 */
import { describe, expect, it } from 'vitest';
import { buildIndex, documentsOf } from '#engine/find.ts';
import { consider, firstOfRule, flawWords, mindOf, reply } from '#engine/hear.ts';
import { readSearchWords } from '../../../content/tools/hear.ts';
import { heard, known, words } from './hearing.ts';

const mind = mindOf(known);
const index = buildIndex(documentsOf(known), readSearchWords(process.cwd()));
const considered = (text: string) =>
  consider(mind, { told: {}, heard: heard(text), words: flawWords(index, mind, text, heard(text)) });
const answer = (text: string) =>
  reply(considered(text), {
    words,
    linkTo: (defect) => `https://halfdry.example/defects/${defect}/`,
    ruleAt: (rule) => `https://halfdry.example/safety/${rule}/`,
    tellAt: 'https://halfdry.example/tell/',
    heard: heard(text),
    ...(heard(text).asksWhich && { whichAt: 'https://halfdry.example/which-coat/' }),
  });

describe('a reply to harm under way', () => {
  it.each([
    ['the rags in the bin are warm, we used danish oil', /^Everyone out now.*Do not carry or open the heap/],
    ['rags in the trash are smoking, tung oil', /^Everyone out now.*Do not carry or open the heap/],
    ['the rag felt warm after I wiped the tung oil off', /^Warm, or a smell of burning: do not carry/],
    ['he left the linseed rags in a pile in the garage', /^See to that heap before all else/],
    ['mixed bleach and ammonia for the mold, now the varnish is cloudy', /^Mixed already: out at once/],
    ['poured bleach on the ring, then ammonia', /^Mixed already: out at once/],
    [
      'I started sanding my 1940s dresser, dust everywhere, kids next door, varnish bubbles',
      /^Stop work on it now, and keep children .*wet cloths.*blood lead test/,
    ],
    ['stripping paint from 1950 with a heat gun, scorch marks', /^Stop work on it now/],
    [
      'can I spray 2K clear in my basement? the furnace is in there',
      /^No spraying of a two-part finish at home/,
    ],
    [
      'The clear has two components, one an isocyanate. May I spray it in my basement with a half mask?',
      /^No spraying of a two-part finish at home/,
    ],
    ['can I spray lacquer next to the water heater', /^No spraying and no open can near that flame/],
    ['got stripper in my eye', /^Take lenses out and rinse the eye with running water now/],
    ['my toddler licked the wet varnish', /^Call Poison Help now/],
    ['my dog licked the wet varnish', /^Call a vet now/],
    [
      'spilled a gallon of lacquer thinner and the water heater just kicked on',
      /^A spill near a flame: everyone out/,
    ],
    ['my son got stripper on his arm, it is burning', /^Wet clothes off, and rinse the skin/],
    ['my hands are burning from stripper', /^Wet clothes off, and rinse the skin/],
    ['lye splashed my leg', /^Wet clothes off, and rinse the skin/],
    ['the stripper burns, its on my wrist', /^Wet clothes off, and rinse the skin/],
    ['the kid touched the stripper, his hand is red', /^Wet clothes off, and rinse the skin/],
    ['the stripper is burning my fingers through the glove', /^Wet clothes off, and rinse the skin/],
    ['wrist stings, I used stripper on the door', /^Wet clothes off, and rinse the skin/],
    ['I got paint remover on my wrist and it hurts', /^Wet clothes off, and rinse the skin/],
    ['stripping a chair, stripper all over me', /^Wet clothes off, and rinse the skin/],
    [
      'I was stripping a door. My arm itches. It got splashed with the stripper.',
      /^Wet clothes off, and rinse the skin/,
    ],
    ['opened the stripper. It went on my leg. It hurts', /^Wet clothes off, and rinse the skin/],
    ['stripper soaked through my gloves. fingers tingle', /^Wet clothes off, and rinse the skin/],
    [
      'I left the linseed rags in a box. The box is hot to touch',
      /^Everyone out now.*Do not carry or open the heap/,
    ],
    ['used a heat gun on the old paint. feeling shaky, metallic taste', /^Out into fresh air now/],
    ['burned my hand with the heat gun while stripping a door', /^Cool the burn/],
    ['cloudy. also bit of a burn on my arm from the heat gun', /^Cool the burn/],
    ['burned myself on the heat gun, and the paint bubbled', /^Cool the burn/],
    ['my husband drank mineral spirits by accident', /^Call Poison Help now/],
    ['drank from the wrong jar, it was turps', /^Call Poison Help now/],
    ['grandpa drank from the turpentine jar', /^Call Poison Help now/],
    ['kid has had a sip of the thinner', /^Call Poison Help now/],
    ['student wheezing from lacquer', /^Out into fresh air now, and call 911/],
    ['my head hurts since the propane heater runs in the garage', /^Out into fresh air now, and call 911/],
    ['small fire in the rag tin, out now', /^Everyone out now/],
    ['i torched the old paint off the rocker with a propane torch', /^Stop work on it now/],
    ['the cat is licking wet varnish off its fur', /^Call a vet now/],
    ['my cat walked through danish oil and is licking its paws', /^Call a vet now/],
    ['rags from danish oil are in the trunk of my car', /^See to that heap before all else/],
    ['i am pregnant and stripped a dresser from the 50s, with no mask', /^Stop work on it now/],
    ['eyes sting from the lacquer in my bedroom', /^Out into fresh air now, and rinse the eyes/],
    ['fresh oil dust in the shop vac, it smells like burning', /^Warm, or a smell of burning: do not carry/],
    [
      'grandmas toy chest from 1962 for my baby, the paint chips and she chews on it',
      /^Take it out of the child’s reach now/,
    ],
    ['poly on the cutting board is peeling into our food', /^Put no more food on it/],
    ['I have asthma and brushed two part poly, now I cough', /^Out of that room and into fresh air now/],
    ['fan on the wet lacquer next to the gas stove', /^No spraying and no open can near that flame/],
    ['I passed out while brushing lacquer in the closet', /^Out into fresh air now, and call 911/],
  ])('says first what saves: %s', (text, first) => {
    const { short, long } = answer(text);
    expect(short).toMatch(first);
    expect(long).toMatch(first);
    expect(short.length).toBeLessThanOrEqual(500);
    expect(short).toMatch(/https:\/\/\S+$/);
  });

  it('tells of fire only where something burns', () => {
    const { short } = answer('burnt my wrist with a heat gun');
    expect(short).not.toMatch(/Everyone out|fire department/);
  });

  it('puts what guards warming the place behind hands off, unless a heater is told', () => {
    const { short } = answer('sprayed lacquer, 45F in the shed, it is blushing white now');
    expect(short).toMatch(/^[^.]*blush[^.]*\. Hands off/);
    expect(short).not.toMatch(/^First: Cold/);
    expect(answer('kerosene heater on in the shed, lacquer went white, 45F').short).toMatch(
      /kerosene heater/,
    );
  });

  it.each([
    'water based poly 20 minutes ago still sticky',
    'shellac 10 minutes ago is tacky',
    'oil poly laid last night at 50F, tacky this morning, is that normal',
    'shellac put on twenty minutes ago feels gummy',
  ])('calls a coat that is still within its time no flaw: %s', (text) => {
    const { short } = answer(text);
    expect(short).toMatch(/^At that age a coat is still drying.*Hands off/);
    expect(short).not.toMatch(/never dries|stays soft/);
  });

  // A water-based coat is dry to the touch within hours, as its cans say: after most of a day it is late.
  it.each([
    'water based poly 20 hours ago still sticky',
    'shellac two days ago still tacky',
    'it is sticky, laid last night',
    'danish oil wiped on 3 hours ago still sticky',
    'wax put on an hour ago is sticky',
    'hardwax oil from 3 hours ago is still tacky',
  ])('calls nothing normal that is past its time, or of no known kind: %s', (text) => {
    expect(answer(text).short).not.toMatch(/still drying: that is normal/);
  });

  it.each([
    ['brushed varnish three weeks ago, my fingernail dents it', 'dry-to-touch'],
    ['is the varnish dry to the touch', undefined],
  ])('takes no film for drier than is told: %s', (text, stage) => {
    expect(considered(text).stage).toBe(stage);
  });

  it('reckons from when the coat was laid, and not from when it was seen', () => {
    const hours = (text: string) => heard(text).facts.find(({ fact }) => fact === 'hours-since-coat')?.value;
    expect(hours('I put poly on yesterday and this morning it looks cloudy')).toBe(24);
    expect(hours('I brushed poly on this morning and it looks cloudy')).toBe(5);
  });

  it('says hands off before it leads to a page', () => {
    const text = 'rained on my wet varnish, chairs outside';
    const { short } = reply(considered(text), {
      words,
      linkTo: (defect) => `https://halfdry.example/defects/${defect}/`,
      heard: heard(text),
      page: { title: 'Weather in a garage', at: 'https://halfdry.example/learn/garage-weather/' },
    });
    expect(short).toMatch(/Hands off.*garage-weather/);
  });

  it('gives the first sentence of a rule that is led to', () => {
    const { short } = reply(considered('what is in the poison cupboard'), {
      words,
      linkTo: (defect) => `https://halfdry.example/defects/${defect}/`,
      heard: heard('what is in the poison cupboard'),
      page: {
        title: 'If it has already happened',
        at: 'https://halfdry.example/safety/emergency/',
        says: firstOfRule(mind, 'emergency'),
      },
    });
    expect(short).toMatch(/^Get help first: call your emergency number, 911 in the US/);
  });

  it('names no flaw beside a call for help', () => {
    const { short } = answer('rags are smoking in the trash can right now, and my table has bubbles');
    expect(short).not.toMatch(/looks like|may be|Hard to say/);
  });

  it('says the flame as well where two dangers meet', () => {
    const { short } = answer('can I spray 2K clear in my basement? the furnace is in there, got orange peel');
    expect(short).toContain('masks with filters do not hold it back');
    expect(short).toContain('near that flame');
  });

  it.each([
    'I laid the rags out flat, danish oil is sticky',
    'I have not mixed bleach and ammonia, the varnish is cloudy',
    'no water heater near, can I spray lacquer',
    'sanded between coats on my new pine table, poly is cloudy',
    'wiped it with a rag and warm water, poly is dull',
    'the furnace in this house blows dry heat, a crack in the lacquer',
    'stripped a door with lye and then poured vinegar on it, white crust',
    'spilled nail polish remover on my table, the poly went soft',
    'the stripper burned the veneer dark',
    'does stripper burn skin',
    'stripper on the hand rail of the stairs, nothing lifts',
    'put stripper on my chair legs and it bubbled',
    'bleach on my table arm took the stain out',
    'my hands are numb from the sander',
    'stripper dripped on her dresser and softened it',
    'the stripper splashed my dresser',
    'how much stripper should I have on hand',
    'stripper on her old dresser does nothing',
    'the top feels smooth under my hands, satin poly went dull',
    'put stripper on my table. it burns through the varnish in ten minutes',
    'the stripper ran down the legs of the chair',
    'used paint stripper on my new dresser. it left a red stain on my gloves',
    'acid stain on my face frame cabinet turned green',
    'can I put stripper on my arm chair',
    'my arms itch. no stripper was used, it was only sanding dust of new pine',
    'quick-fire question: the poly went on well and now it is cloudy',
    'it was 50 F and it went up to 70, the lacquer is fine',
    'the fume hood went up for sale, varnish has runs',
  ])('says none of it where there is none: %s', (text) => {
    expect(answer(text).short).not.toMatch(
      /^(?:Everyone|Warm|See to|Mixed|Stop work|No spraying|Take|Call|Out |A spill|Wet)/,
    );
  });
});

describe('each case of a rule', () => {
  it('does alone: its first sentence is an order, and it is whole sentences', () => {
    const cases = [...mind.dangers, ...mind.fired].flatMap(({ atOnce = [] }) => atOnce);
    expect(cases.length).toBeGreaterThan(10);
    for (const says of cases) {
      expect(says).toMatch(
        /^(?:Everyone out|Keep children out|Never into|Warm, or a smell of burning: do not|See to|A spill near a flame: everyone out|Wet clothes off|Put no|Out of|Mixed already: out|Stop|No spraying|No rags|Do not open, shake or carry|Stay away from|Switch it off|Go to an emergency room|Out into|Take|Call|Cool|Press|Wipe it off)/,
      );
      expect(says).toMatch(/[.]$/);
    }
  });

  it('is told only where the rule itself is called for', () => {
    // New wood, nothing old below: dust alone is no lead.
    expect(answer('I started sanding my new pine bench, dust everywhere, poly is cloudy').short).not.toMatch(
      /lead/,
    );
  });
});

describe('the rules beside the first', () => {
  it('are whole sentences, never bare titles', () => {
    const { short } = answer('linseed oil on the butcher block is gummy after 5 days, rags are in a pile');
    expect(short).toContain('No finish makes a cutting surface');
    expect(short).not.toMatch(/Mind too|Food on it\?/);
  });

  it('tell a date that is near and a child what waits', () => {
    const { short } = answer('poly is tacky after 2 days, delivery is tomorrow and the lady has a baby');
    expect(short).toMatch(/30 days for a child, a bed or food/);
  });

  it('tell of spraying last where the coat was sprayed and is dry', () => {
    const { short } = answer('sprayed lacquer a week ago, it was raining, now it is cloudy. Not sticky.');
    expect(short).toMatch(/^(?:That|Most likely|Hard)/);
  });
});

const DAY = /^That day is no promise/;
const CARE = /^A soft dry cloth/;
const STRIP = /^Before any stripping/;
/** A reply as it is given where the page that the words ask for is known. */
const withPage = (text: string) =>
  reply(considered(text), {
    words,
    linkTo: (defect) => `https://halfdry.example/defects/${defect}/`,
    ruleAt: (rule) => `https://halfdry.example/safety/${rule}/`,
    heard: heard(text),
    page: { title: 'A page', at: `https://halfdry.example/${heard(text).asksFor?.page}/` },
  }).short;

describe('what is asked while nothing is wrong', () => {
  it.each([
    ['commission due in 3 days, 58F and 80% humidity, 3 coats of oil poly, can i make it', DAY],
    ['delivery thursday, 58 degrees and 80% humidity, two coats of oil poly, will it be dry', DAY],
    ['party on saturday, will two coats of varnish be cured in time', DAY],
    ['how do i care for the table i bought from you, water based poly on chalk paint', CARE],
    ['what do i clean my lacquered dresser with', CARE],
    ['how should i clean the dresser you sold me', CARE],
    ['can i put hot plates on the waxed table', CARE],
    ['how do i strip polyurethane off shellac', STRIP],
    ['how do i strip a dresser', STRIP],
  ])('is answered, and no flaw is named: %s', (text, first) => {
    expect(withPage(text)).toMatch(first);
    expect(withPage(text)).not.toMatch(/may be|Most likely|looks like|could be/);
    expect(withPage(text)).toMatch(/https:\/\/halfdry\.example\/(?:page|lesson)\/\S+\/$/);
    expect(heard(text).facts.some(({ fact }) => fact === 'coat-number')).toBe(false);
  });

  it.each([
    'the poly is sticky, will it be dry by friday',
    'how do i clean the white ring off my shellac table',
    'how do i strip it, the poly is peeling',
    'will it be dry by friday, brushed the poly an hour ago',
    'how do I clean it before painting',
  ])('is not heard where something is told: %s', (text) => expect(heard(text).asksFor).toBeUndefined());

  it('names no flaw where a kind of finish alone is told', () => {
    expect(answer('can i sand shellac from 1930').short).not.toMatch(/may be|Most likely/);
  });
});

describe('a step that is over', () => {
  it.each([
    'customer cleaned the shellac top with ammonia window cleaner and its white and sticky',
    'client washed the shellac table with ammonia, now its tacky',
    'my mother wiped the lacquered desk with ammonia and it went cloudy',
    'sprayed lacquer over my mahogany table and its going pink and red, still wet',
    'sprayed lacquer 4 hours after the gel stain, its wrinkling',
    'feels like sandpaper after spraying lacquer outside',
  ])('is told of no caution that comes before it: %s', (text) => {
    const { short } = answer(text);
    expect(short).not.toMatch(/^First|before you begin|sleeves first/);
    expect(short).toMatch(/vapor burns|gloves and goggles/);
    expect(short.search(/vapor burns|gloves and goggles/)).toBeGreaterThan(
      short.search(/Hands off|leave it alone/),
    );
  });

  it.each([
    ['can i clean shellac with ammonia', /^First: Lye/],
    ['going to use lye on the drips', /^First: Lye/],
    ['washed it with ammonia, can I use peroxide next, the oak is dark', /^First: Lye/],
    ['i am spraying lacquer in the basement and it blushes, still wet', /^No spraying in a home/],
    [
      'sprayed lacquer an hour ago, orange peel, can i spray another coat',
      /^No, do not lay another coat yet\. First: Before you spray/,
    ],
  ])('is not taken for over: %s', (text, first) => expect(answer(text).short).toMatch(first));

  it('leaves a film that a customer cleaned for cured', () => {
    expect(considered('customer cleaned the shellac top with ammonia and its white and sticky').stage).toBe(
      'cured',
    );
    expect(considered('brushed shellac for a customer an hour ago, it is sticky').stage).toBe('setting');
  });
});

describe('a reply without a flaw', () => {
  it('leads to the page that names a top coat', () => {
    const { short } = answer('what is the best topcoat for a toddlers toy box painted in milk paint');
    expect(short).toMatch(/^First: For a child/);
    expect(short).toMatch(/Which top coat fits it, with the reason: https:\S+which-coat\/$/);
    expect(short).not.toMatch(/Hard to say|may be/);
  });

  it.each([
    'le puse laca en spray a mi mesa y quedo como piel de naranja, que hago?',
    'tengo burbujas in the poly, brushed it, dry now, 2 dias',
    'mein Tisch ist nach zwei Tagen noch klebrig, ich habe lack benutzt',
  ])('takes nothing for sure in another language: %s', (text) => {
    const { short } = answer(text);
    expect(short).toMatch(/^I read only English, so I cannot tell what it is\./);
    expect(short).not.toMatch(/looks like|may be|Most likely/);
  });

  it.each([
    'my pros and cons of poly over shellac',
    'the mesa oak table has brush marks from the poly',
    'comment below if the lack of sheen bothers you, satin poly went dull',
  ])('takes English for English: %s', (text) => expect(heard(text).otherTongue).toBe(false));
});

describe('what was asked', () => {
  it('is answered first: a coat over wax', () => {
    const { short } = answer(
      'clear wax on the kitchen table 2 weeks ago, every glass leaves a ring. Can I just poly over it?',
    );
    expect(short).toMatch(/^No, lay no coat over the wax: a film over wax peels/);
    expect(short).not.toContain('water or a wet thing');
  });

  it('takes a water heater for no heat on the film', () => {
    expect(answer('can I spray lacquer next to the water heater? it has orange peel').short).not.toContain(
      'do not heat',
    );
  });

  it('denies nothing that nobody wants', () => {
    expect(
      answer('oil varnish turned yellow after a year, how do I fix it, no sanding please').short,
    ).not.toMatch(/do not sand it/);
  });

  it('says nothing of leaving it as it is where that is not sure', () => {
    const { short } = answer(
      'water based poly 3 days ago, a hot mug on it this morning, white mark. Start over?',
    );
    expect(short).not.toContain('Leave it as it is');
  });
});
