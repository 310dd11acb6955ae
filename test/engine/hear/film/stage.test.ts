/**
 * How dry a film is by what is said of it, never drier than words and hours both allow: hands on a film that sets do harm,
 * and hands kept off a dry one do none. Sentences of our own; what each allows is plain from its words (common practice).
 */
import { describe, expect, it } from 'vitest';
import { SURE } from '#engine/hear.ts';
import { fact } from '../hearing.ts';

const sure = (text: string, name: string) => {
  const found = fact(text, name);
  return found && found.sure >= SURE ? found.value : undefined;
};
const stage = (text: string) => sure(text, 'stage');
const overdue = (text: string) => sure(text, 'overdue');

describe('by words alone', () => {
  it.each([
    ['the poly is still wet', 'wet'],
    ['I am brushing poly right now and it is wet', 'wet'],
    ['the poly is tacky', 'setting'],
    ['the varnish is still sticky', 'setting'],
    ['the lacquer is not dry', 'setting'],
    ['the poly is dry to the touch', 'dry-to-touch'],
    ['the poly feels dry', 'dry-to-touch'],
    ['the poly is not sticky', 'dry-to-touch'],
    ['the poly is fully cured', 'cured'],
  ])('%s: %s', (text, wanted) => {
    expect(stage(text)).toBe(wanted);
  });

  it.each(['should I wait until the poly is dry', 'will the poly be dry tomorrow', 'what poly is best'])(
    '%s: none',
    (text) => {
      expect(stage(text)).toBeUndefined();
    },
  );

  it('a layer below that is not dry tells nothing of the coat', () => {
    expect(stage('the stain was dry, then I brushed poly')).not.toBe('dry-to-touch');
    expect(stage('the stain was not dry when I brushed the poly')).not.toBe('setting');
    expect(stage('I stained it, the second coat of poly is tacky')).toBe('setting');
  });

  it('what is thick and sticky in its can is no film', () => {
    expect(stage('the poly in the can is sticky')).toBeUndefined();
  });
});

describe('by hours alone', () => {
  it.each([
    // Within twenty minutes any film is wet.
    ['I brushed on poly 10 minutes ago', 'wet'],
    // Well past the slow end of every kind, doubled for air that is not known.
    ['I brushed on water-based poly 3 weeks ago', 'recoatable'],
    ['I brushed on oil-based poly 3 weeks ago', 'recoatable'],
    ['I sprayed lacquer 2 weeks ago', 'recoatable'],
    // A month and more.
    ['I brushed on poly 3 months ago', 'cured'],
    ['I varnished it 2 years ago', 'cured'],
  ])('%s: %s', (text, wanted) => {
    expect(stage(text)).toBe(wanted);
  });

  it('a month is two in the cold', () => {
    expect(stage('I brushed on poly 6 weeks ago')).toBe('cured');
    expect(stage('I brushed on poly 6 weeks ago in a garage at 50 F')).toBe('recoatable');
    expect(stage('I brushed on poly 6 weeks ago in a garage at 70 F')).toBe('cured');
    expect(stage('I brushed on poly 4 months ago in a garage at 50 F')).toBe('cured');
  });

  it('between the fast and the slow end nothing is said', () => {
    expect(stage('I brushed on oil-based poly 8 hours ago')).toBeUndefined();
  });
});

describe('by both, never drier than both allow', () => {
  it.each([
    ['I brushed on poly 2 hours ago and it is hard', 'dry-to-touch'],
    ['I brushed on poly 3 weeks ago, it is dry to the touch', 'dry-to-touch'],
    ['I brushed on poly 3 weeks ago, it is dry', 'recoatable'],
    ['I brushed on poly 5 hours ago, it is tacky', 'setting'],
    ['I brushed on poly 10 minutes ago, it is wet', 'wet'],
    ['I brushed on poly 3 months ago and it is cured', 'cured'],
  ])('%s: %s', (text, wanted) => {
    expect(stage(text)).toBe(wanted);
  });
});

describe('what is sticky long past its time', () => {
  it.each([
    'I brushed on poly 2 weeks ago and it is still tacky',
    'the varnish never hardened',
    'the poly is permanently sticky',
    'the oil has been tacky for weeks',
    'the oil has been tacky for months',
  ])('%s: overdue', (text) => {
    expect(overdue(text)).toBe('yes');
    expect(stage(text)).not.toBe('cured');
  });

  it.each([
    'I brushed on poly 3 hours ago and it is tacky',
    'I brushed on poly this morning and it never dried',
    'I brushed on poly 2 weeks ago and it is hard',
    'my nail leaves a dent in the poly from 2 weeks ago',
    'I worry that the poly never hardens',
  ])('%s: not overdue', (text) => {
    expect(overdue(text)).toBeUndefined();
  });

  it('a dent of a nail in a film of two weeks is soft below a dry skin', () => {
    expect(stage('I brushed on poly 2 weeks ago and my nail leaves a dent')).toBe('dry-to-touch');
  });
});

describe('what was hard once and is soft now', () => {
  it.each([
    'the varnish on our table, 5 years old, is getting sticky',
    'my kitchen cabinets have become sticky',
    'the finish on my old chair went gummy',
    'our dining table turned sticky where we sit',
  ])('%s: a cured film that softened', (text) => {
    expect(stage(text)).toBe('cured');
    expect(overdue(text)).toBeUndefined();
  });
});

describe('a mark of use on a piece of which no work is told', () => {
  it.each([
    'a hot pan left a white ring on my table',
    'a wet glass left a ring on our coffee table',
    'a plastic mat left a print on my dining table',
    'I inherited a dresser from my grandmother and its finish is cloudy',
  ])('%s: cured', (text) => {
    expect(stage(text)).toBe('cured');
  });

  it('where a coat was laid of late it is not', () => {
    expect(stage('I brushed poly on my table 3 days ago and a hot pan left a ring')).not.toBe('cured');
  });
});
