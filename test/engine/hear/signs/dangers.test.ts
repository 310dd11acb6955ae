/**
 * What words of a post call for before all else. The texts are invented; what each must bring is what the agencies that
 * the rules rest on ask for (rags: a fire marshal; swallowed and in the eye: poison centers; bleach: a poison center).
 */
import { describe, expect, it } from 'vitest';
import { consider, mindOf, reply } from '#engine/hear.ts';
import { heard, known, words } from '../hearing.ts';

const mind = mindOf(known);
const warned = (text: string) =>
  consider(mind, { told: {}, heard: heard(text) }).warnings.map(({ id }) => id);
const linkTo = (defect: string): string => `https://halfdry.example/defects/${defect}/`;

describe('a danger that is named', () => {
  it.each([
    ['My linseed oil table is sticky. I threw the rags in the kitchen bin', ['oily-rags']],
    ['washed the oily rags and put them in the dryer', ['oily-rags']],
    ['left the dust of the fresh oil in the shop vac overnight', ['oily-rags']],
    ['my student put a rag with danish oil in the bin an hour ago', ['oily-rags']],
    ['i put the cloth i used for the linseed in my kitchen garbage', ['oily-rags']],
    ['she put a paper towel with tung oil in the waste basket', ['oily-rags']],
    ['the rag i wiped the poly with is hot', ['oily-rags']],
    ['the rags from the danish oil are smoking', ['oily-rags', 'emergency']],
    ['we put the rags in the washing machine, they had linseed on them', ['oily-rags']],
    ['emptied the sander bag with oil poly dust into the kitchen trash', ['oily-rags']],
    ['bag of sanding dust from the oil finish is in the garage bin', ['oily-rags']],
    ['it rained on my wet varnish', ['weather-on-a-wet-coat']],
    ['rain drops fell on the wet poly', ['weather-on-a-wet-coat']],
    ['brushed the door and it rained on it before it dried', ['weather-on-a-wet-coat']],
    ['the sun shone on the wet coat', ['weather-on-a-wet-coat']],
    ['my head is pounding since i varnished the closet', ['vapor-and-flame']],
    ['space heater next to wet lacquer', ['vapor-and-flame']],
    ['mixed oxalic acid and bleach on a stain', ['bleach-and-cleaners']],
    ['used oxalic acid after bleach on the same spot', ['bleach-and-cleaners']],
    ['rags are smoking in the trash can right now, tung oil', ['emergency', 'oily-rags']],
    ['the rags in the bin are smoking what do I do now', ['emergency', 'oily-rags']],
    ['the rags I threw in the trash yesterday are now smoking', ['emergency', 'oily-rags']],
    ['burning smell from the rag bin', ['emergency']],
    ['smoke from the trash in the garage', ['emergency']],
    ['the pile of rags started smoldering', ['emergency']],
    ['my son licked the wet varnish', ['emergency']],
    ['got lye stripper in my eye', ['emergency', 'caustic']],
    ['I feel dizzy after brushing lacquer in the closet', ['emergency', 'vapor-and-flame']],
    ['can I mix bleach and vinegar for the ring', ['bleach-and-cleaners']],
    ['put bleach on the ring and then ammonia', ['bleach-and-cleaners', 'caustic']],
    ['old stripper says methylene chloride', ['stripper-with-dichloromethane', 'stripper-care']],
    ['propane heater in the garage while the varnish dries', ['no-fuel-heater']],
    ['tried to dry the varnish with a heat gun and it bubbled', ['no-heat-on-a-wet-film']],
    ['I want to warm the spray can in hot water', ['aerosol-can']],
    ['I am pregnant, can I strip a chair', ['pregnant']],
    ['black mold inside the drawer, varnish over it?', ['mold']],
    ['poured the thinner down the sink', ['waste']],
    ['smoking while brushing shellac', ['vapor-and-flame']],
    ['my husband smokes in the garage where I varnish', ['vapor-and-flame']],
    ['fan on wet lacquer', ['vapor-and-flame']],
    ['a box fan blowing on my fresh lacquer', ['vapor-and-flame']],
    ['put the varnish can on the stove to warm it', ['vapor-and-flame']],
    ['the rag felt warm after I wiped the tung oil off', ['oily-rags']],
    ['is it safe to sleep in the room with fresh poly', ['cure-before-use']],
    ['woolly gray board behind the stove cabinet', ['asbestos']],
    ['a ten year old stripper from the shed', ['stripper-with-dichloromethane', 'stripper-care']],
  ])('is heard: %s', (text, rules) => {
    expect(warned(text)).toEqual(expect.arrayContaining(rules));
    expect(warned(text)[0]).toBe(rules[0]);
  });

  it.each([
    'I do not own a heat gun, the varnish bubbled',
    'crown molding with brush marks',
    'the paint drank the wax in places',
    'a candle dripped wax on my waxed table',
    'cloudy satin poly over navy',
    'no fan, and the wet lacquer went white',
    'dried the water based poly with a fan',
    'wiped it with a cloth and warm water',
    'I wiped water based poly on with a cloth and it dried streaky',
    'brown runs on a piece from a home of smokers',
    'burnt smell in the old finish of a table',
  ])('is not heard where there is none: %s', (text) => {
    expect(warned(text)).toEqual([]);
  });
});

describe('a water heater that burns gas', () => {
  it.each([
    'there is a gas water heater in the garage where I varnish',
    'our propane water heater stands beside the wet lacquer',
    'gas hot water heater in the basement, oil based poly',
  ])('is a flame near vapor and no heater of the room: %s', (text) => {
    expect(warned(text)).toContain('vapor-and-flame');
    expect(warned(text)).not.toContain('no-fuel-heater');
  });

  it('takes no warning from a gas heater named beside it', () => {
    const both = warned('a gas water heater, and a gas heater to dry the varnish');
    expect(both).toEqual(expect.arrayContaining(['vapor-and-flame', 'no-fuel-heater']));
  });
});

describe('what facts call for', () => {
  it('names the spray only where it was sprayed', () => {
    expect(warned('oil based varnish went dull')).not.toContain('vapor-and-flame-when-spraying');
    expect(warned('sprayed lacquer went white')).toContain('vapor-and-flame-when-spraying');
    expect(warned('sprayed it in the basement, orange peel')).toContain('vapor-and-flame-when-spraying');
    expect(warned('water based poly from an hvlp, orange peel')).not.toContain(
      'vapor-and-flame-when-spraying',
    );
  });

  it.each([
    ['unknown paint from the 60s, clear coat peeling', 'lead-before-sanding'],
    ['70s dresser, the poly is peeling', 'lead-before-sanding'],
    ['bunk bed with sticky varnish', 'childs-item'],
    ['kids chair feels sticky', 'childs-item'],
    ['sprayed 2K clear in the garage', 'hardener-isocyanate'],
    ['cutting board with polyurethane peeling', 'food-surface'],
    ['conversion varnish is still soft', 'hardener-acid'],
  ])('hears in "%s" what calls for %s', (text, rule) => {
    expect(warned(text)).toContain(rule);
  });

  it('takes a heat gun for no spray gun, and weather in the 60s for no old paint', () => {
    expect(heard('dried it with a heat gun').facts.find(({ fact }) => fact === 'applicator')).toBeUndefined();
    expect(warned('garage is in the 60s today, poly is slow')).not.toContain('lead-before-sanding');
  });
});

describe('the reply', () => {
  const answer = (text: string) =>
    reply(consider(mind, { told: {}, heard: heard(text) }), { words, linkTo }).short;

  it('names the cautions after the first one too', () => {
    const short = answer('antique high chair, paint chips, baby uses it');
    expect(short).toMatch(/^First: .*Keep it from the child until these are settled\./);
    expect(short).toContain('The old finish may hold lead: do not sand, scrape, strip or heat it yet.');
    expect(short.length).toBeLessThanOrEqual(500);
  });

  it('tells of each rule in its first sentence alone what to do or not to do', () => {
    // A short reply has no more of a rule than that: it must be an order, or say what no one does.
    const ORDER =
      /\b(don[’']t|do not|never|get help|keep|lay|leave|goggles|cut|put out|sand outdoors|no heat gun|outdoors|nothing|nitrile|for every spray|wear|gray, woolly|a swab|no finish|air the room|until it is cured|every spray can)\b/i;
    const silent = [...mind.dangers, ...mind.fired]
      .filter(({ isStop }) => isStop)
      .filter(({ say }) => !ORDER.test(/^.*?[.!?](?=\s|$)/.exec(say)?.[0] ?? say))
      .map(({ id }) => id);
    expect(silent).toEqual([]);
  });
});
