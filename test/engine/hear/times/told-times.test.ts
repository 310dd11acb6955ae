/** How dry it is, where hours, work done or use tell it. Messages are invented. */
import { describe, expect, it } from 'vitest';
import { fact, heard } from '../hearing.ts';

const value = (text: string, name: string) => fact(text, name)?.value;

describe('a time that is not the coat’s', () => {
  it.each([
    'left a wet glass on the shellac table overnight, now a white ring',
    'somebody put a cold drink on my dresser overnight and there is a ring',
  ])('belongs to what stood there: %s', (text) => expect(fact(text, 'hours-since-coat')).toBeUndefined());

  it('leaves the age of the coat beside it', () => {
    expect(
      value('left a wet towel on the dresser overnight, poly is 2 yrs old', 'hours-since-coat'),
    ).toBeGreaterThan(8000);
  });

  it('still hears a coat that was left overnight', () => {
    expect(value('brushed the poly and left it to dry overnight', 'hours-since-coat')).toBeGreaterThan(6);
  });
});

describe('a piece of the sixties', () => {
  it('is old, and says nothing of the air', () => {
    const text = 'grandpa made it in the 60s, white ring from a glass';
    expect(value(text, 'age')).toBe('before-1993');
    expect(fact(text, 'air-celsius')).toBeUndefined();
    expect(value('garage is in the 60s today, poly is slow', 'air-celsius')).toBeGreaterThan(14);
  });

  it('was hard before a glass stood on it and made it sticky', () => {
    expect(
      value(
        'shellac was fine for a month, then a wet glass stood on the table, now a ring and it is sticky',
        'stage',
      ),
    ).toBe('cured');
  });
});

describe('how dry it is', () => {
  it('is told by two hours of the clock', () => {
    expect(value('laid poly at 2pm its 5pm now and I see a run', 'hours-since-coat')).toBe(3);
    expect(value('brushed varnish around 9:30 am, it is 1 pm now', 'hours-since-coat')).toBe(3.5);
    expect(fact('laid poly at 2pm yesterday, its 5pm now', 'hours-since-coat')?.value).not.toBe(3);
  });

  it('is told by sanding that went through, with nothing laid since', () => {
    expect(value('sanded between coats and went through to wood on the corners', 'stage')).toBe('recoatable');
    expect(value('sanded through to wood, then brushed a second coat', 'stage')).not.toBe('recoatable');
  });

  it('is hands off so soon after it was laid that no kind has dried', () => {
    expect(value('spar urethane, brushed 2 hours ago, bubbles', 'stage')).toBe('setting');
    expect(value('water based poly yesterday, milky', 'stage')).not.toBe('setting');
  });

  it('is no more than one standing of a bed time', () => {
    expect(fact('second coat at teatime, now its bed time, soft underneath', 'piece')).toBeUndefined();
  });
});

describe('wax rubbed over a film', () => {
  it.each([
    'I put satin poly on a black table, it dried with a fog. I rubbed it with steel wool and wax and it went, now it came back',
    'brushed varnish on, then steel wool and wax, haze',
  ])('is no kind of top coat: %s', (text) => {
    expect(value(text, 'family')).not.toBe('wax');
    expect(heard(text).among.find((one) => one.fact === 'family')?.values).toContain('oil-based');
  });

  it('is the top coat where no film was laid', () => {
    expect(value('used clear wax on my table, white haze', 'family')).toBe('wax');
    expect(value('clear wax on the table, can I poly over it?', 'family')).toBe('wax');
  });
});

describe('a two-part finish', () => {
  it.each(['my 2 part poly is sticky', 'two-part clear went cloudy', '2k clear has runs'])(
    'calls for its stop: %s',
    (text) => expect(heard(text).dangers.map(({ rule }) => rule)).toContain('hardener-isocyanate'),
  );
});

describe('what bleeds through', () => {
  it('is heard through white paint, and is no white cloud', () => {
    const text = 'my dark stain is coming thru the white paint in pinkish patches';
    expect(heard(text).signs.find(({ question }) => question === 'colored-stain')?.answer).toBe('yes');
  });
});
