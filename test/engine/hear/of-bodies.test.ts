/** Words that may name a flaw of a coat and are told of somebody, of the air or of one spot. Letters are invented. */
import { describe, expect, it } from 'vitest';
import { understand } from '#engine/hear.ts';
import { fact, heard, sign, understanding } from './hearing.ts';
import { links } from './links.ts';

const understood = (text: string) => understand(understanding, { text }, links);
const first = (text: string) => understood(text).considered.likely[0]?.defect;

describe('a scratched child', () => {
  it.each([
    'dry now, and the varnish is rough like grit: I worry that it scratches the baby',
    'top feels sandy, hardened overnight, will my grandson get scratched by it',
    'the poly is rough to the hand, my daughter might scratch her arms on it',
  ])('is no sanding scratch: %s', (text) => expect(first(text)).not.toBe('sanding-scratches'));
  it('and scratches in the coat are, beside a child too', () => {
    expect(first('sanding scratches show under the second coat, my son sanded it')).toBe('sanding-scratches');
    expect(heard('the clear shows swirls and scratches from the sander').aside).toBeUndefined();
  });
});

describe('humidity', () => {
  const damp = (text: string) => sign(text, 'cold-or-damp-while-drying');
  it.each([
    'humidity 30 percent, the poly drags',
    'relative humidity was 45 % and 72 °F',
    'humidity 40 %, dry',
  ])('named alone is no damp: %s', (text) => expect(damp(text)).not.toBe('yes'));
  it.each(['it was so humid when it dried', 'humidity was high all night', 'dried in this humidity'])(
    'told to be high is: %s',
    (text) => expect(damp(text)).toBe('yes'),
  );
});

describe('a spot that is sanded through', () => {
  const base = (text: string) => fact(text, 'base')?.value;
  it.each([
    'old painted dresser, sanded through to bare wood on the corners',
    'I rubbed through to raw oak in two spots of an old varnished table',
    'an old painted door, burned down to bare wood with the sander',
  ])('tells of no bare piece: %s', (text) => {
    expect(base(text)).toBe('old-finish');
    expect(understood(text).considered.warnings.some(({ isStop }) => isStop)).toBe(true);
  });
  it('and a piece that was stripped is bare', () => {
    expect(base('stripped to bare wood, then one coat of shellac')).toBe('bare-wood');
    expect(base('sanded back to bare oak')).toBe('bare-wood');
  });
});
