/**
 * Classes of what laymen say, each with its sisters: the same thing said in other words must be heard alike. Sentences of
 * our own, invented; what each tells is plain from its words.
 */
import { describe, expect, it } from 'vitest';
import { SURE } from '#engine/hear.ts';
import { heard } from './hearing.ts';

/** What is taken as told, by name; `among` where words leave the kind of finish open. */
const told = (text: string, name: string): string => {
  const { facts, signs, among } = heard(text);
  if (name === 'among') return String(among.length > 0);
  const fact = facts.find((one) => one.fact === name && one.sure >= SURE);
  const sign = signs.find((one) => one.question === name && one.sure >= SURE);
  return fact ? String(fact.value) : (sign?.answer ?? 'none');
};

/** A name with any of the values that are right; after "not" those that are wrong. */
type Class = {
  readonly wanted: Readonly<Record<string, readonly string[]>>;
  readonly said: readonly string[];
};

const CLASSES: Readonly<Record<string, Class>> = {
  'a coat that draws back': {
    wanted: { 'drew-back': ['yes'] },
    said: [
      'the varnish drew away from a few places',
      'poly pulled back from some spots',
      'clear coat shrank away in circles',
      'the finish opens up in round holes',
      'it draws up into little islands',
      'there are craters where it parted',
      'the lacquer backed away from the silicone',
      'the oil varnish drew back overnight',
      'the paint crawled away from the edge',
      'varnish drawing away from the wood',
      'it left bald spots all over',
      'poly would not take in places',
      'the coat ran away from the greasy corner',
      'it beads like on a waxed car',
    ],
  },
  'a film that is sticky long past its time': {
    wanted: { stage: ['dry-to-touch'], overdue: ['yes'] },
    said: [
      'I painted the dresser four years ago and it is still sticky',
      'Painted my cabinets two years ago, still tacky',
      'Varnished this ten years ago and it never got hard',
      'I laid poly on the desk three years ago. It is still a bit tacky',
      'The shelves were painted six years ago and things still stick, the paint is sticky',
      'It has been weeks and it is still sticky',
      'It has been months now, still tacky',
      'been weeks, door still sticks and feels tacky',
      'After weeks it is still gummy',
      'Weeks on and the poly is still soft and sticky',
      'three months on it is sticky to the hand',
      'the paint of two years back is still tacky',
      'it has been over a month and the varnish is still tacky',
      'brushed it in spring, it is still tacky',
      "it's been ages, the poly is still sticky",
      'we had the cabinets painted last year and they are still sticky',
      'more than a year later the paint stays tacky',
    ],
  },
  'an old film that went soft in use': {
    wanted: { stage: ['cured'] },
    said: [
      'Our kitchen cabinets have become sticky',
      'My old cabinets got sticky after I cleaned them with a degreaser, they are not new',
      'I cleaned my kitchen cabinets and now they are tackier than before',
      'Our dining table gets sticky since we use a new cleaner',
      "The arms of my rocking chair have gone sticky, it was my grandmother's",
      "grandma's table went gummy",
      'The kitchen doors are getting sticky around the handles',
      'our oak cupboards turned sticky near the stove',
      'my desk has become tacky where my arms lie',
      'the church pews are becoming sticky',
      'I wiped our table with vinegar and the finish turned gummy',
      'the handles of my cabinets have started to feel sticky',
      "my chair's arms are sticky lately, it is not new",
      'the desk is softer than before since I cleaned it',
    ],
  },
  'a film that is hard': {
    wanted: { stage: ['recoatable', 'cured'] },
    said: [
      'the drip is hard',
      'the run is rock hard',
      'it is dry through',
      'the varnish is hard and dry',
      'the coat dried hard',
      'it has hardened completely',
      'dried hard as a rock',
      'the drip has gone hard',
      'the sag is dry all the way through',
      'the paint is dry and hard right through',
      'it is bone dry',
      'the finish feels hard',
      'the coat is now hard',
      'hard dry coat, run in it',
      'the drips are hard already',
    ],
  },
  '"hard" and "dry" of no film that is': {
    wanted: { stage: ['none'] },
    said: [
      'it is hard to see',
      'a hard wax oil',
      'it is hard to sand',
      'hard to say how dry it is',
      'is it hard yet',
      'when will it be hard',
      'it should be hard by now',
      'it never gets hard water marks',
    ],
  },
  '"run" of no run': {
    wanted: { 'not hangs-down': ['yes'] },
    said: [
      'I run my hand over it and feel grit',
      'I ran my fingers along the top',
      'running my nail across the grain I feel ridges',
      'we run a dehumidifier',
      'I ran out of varnish',
      'it runs in the family',
      'ran the sander over it',
      'I run a small shop',
      'ran my palm across the door',
      'in the long run it yellowed',
      'a run of cabinets, all cloudy',
      'I ran a fan over night',
      'run your finger over the top and you feel it',
    ],
  },
  'a puddle of what was spilled': {
    wanted: { 'not worst-where-thick': ['yes'] },
    said: [
      'it is standing in a puddle on the table',
      'a puddle of wine on the table',
      'water stood in a puddle',
      'the vase left a puddle',
    ],
  },
  '"rolled" without a roller': {
    wanted: { applicator: ['none'] },
    said: [
      'the paint rolled up under my thumb',
      'the film rolled off in crumbs',
      'it rolled away from the edge',
      'the finish rolls up when I sand',
      'paint rolling up into goo',
      'they rolled the piano into the room',
    ],
  },
  'a cast that is seen as haze': {
    wanted: { 'white-or-milky': ['yes'] },
    said: [
      'a whitish cast on the doors',
      'a milky tinge in the corners',
      'bluish cast over black',
      'a grayish veil',
      'a cloudy look',
      'the film has clouded',
      'whitish haze',
      'hazy cast',
    ],
  },
  'a time of a layer below, or of people': {
    wanted: { 'hours-since-coat': ['none'] },
    said: [
      'the glaze dried a day',
      'oil glaze, which had dried two days, then lacquer',
      'the undercoat had two hours',
      'stain dried overnight, then poly',
      'the dye dried for a day before the lacquer',
      'primer dried a week, then enamel',
      'the filler had a day to dry, then varnish',
      'my mother smoked for fifty years',
      'we lived there for thirty years',
      'she smoked in the house for 40 years, drawers smell',
    ],
  },
  'black that is no dark base': {
    wanted: { 'base-tone': ['none', 'wood'] },
    said: [
      'black patches in the wood',
      'there is a black patch under the pot',
      'gray and black marks on the top',
      'the wood turned black',
      'black streaks run along the grain',
      'a black stain under the vase',
      'black dots in the finish',
      'it went black at the joint',
      'black rust round the screws',
      'a black smudge',
    ],
  },
  'a coat that is not laid': {
    wanted: { 'coat-number': ['5'] },
    said: [
      'I laid five coats and will not lay another coat',
      'five coats of varnish, I would rather not put on another coat',
      'five coats of poly, do I need another coat',
      'five coats on it, I do not want another coat',
      'five coats of clear, should I add another coat',
    ],
  },
  'milk, chalk and white of no haze': {
    wanted: { 'not white-or-milky': ['yes'] },
    said: [
      'the milk paint chips',
      'milk paint comes off',
      'chalk paint under it',
      'chalk style paint on a chest',
      'milk painted dresser',
      'white oak table',
      'white kitchen cabinets',
      'I want it white',
    ],
  },
  'a coat that is only asked about': {
    wanted: { among: ['false'] },
    said: [
      'will a clear coat hold it together',
      'should I put a clear coat on',
      'would a coat of poly help',
      'could I use some varnish over it',
      'would another clear coat hide it',
      'can I seal it with clear coat',
      'do I need a topcoat',
    ],
  },
  'a paint or a stain that is the coat itself': {
    wanted: { stage: ['setting'] },
    said: [
      'the gel stain is still sticky',
      'the gel stain went on thick and stays tacky',
      'I put gel stain on thick, it is sticky',
      'the paint drags, it is tacky',
      'I painted a leg and the paint is tacky',
      'the enamel is still tacky and drags',
      'the stain is gummy and wet',
      'the paint is tacky, I can see a run',
      'the paint is still soft',
    ],
  },
  'a smell': {
    wanted: { 'only-a-smell': ['yes'] },
    said: [
      'the drawers smell of smoke',
      'the dresser reeks',
      'the drawers stink',
      'the bed has the stench of cigarettes',
      'mother was a smoker, the clothes cannot be worn',
      'it smells of mothballs',
      'there is a whiff of mice',
      'the cabinet smells of an old house',
    ],
  },
  '"a bit" and "must"': {
    wanted: { 'not first-coat-on-bare-wood': ['yes'], 'not small-and-separate': ['yes'] },
    said: ['it is a bit sticky', 'the top is a bit dull', 'must I strip it'],
  },
  '"stripped" of no stripe': {
    wanted: { 'not lines-or-bands': ['yes'] },
    said: ['I stripped the table', 'do I strip it'],
  },
};

describe.each(Object.entries(CLASSES))('%s', (_, { wanted, said }) => {
  it.each(said)('%s', (text) => {
    for (const [name, values] of Object.entries(wanted)) {
      const value = told(text, name.replace(/^not /, ''));
      if (name.startsWith('not ')) expect(values, name).not.toContain(value);
      else expect(values, name).toContain(value);
    }
  });
});
