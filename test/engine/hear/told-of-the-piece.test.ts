/**
 * What is told of the piece and of the hours since its coat, by the small lexicon: what lies below, what was stripped, made,
 * guessed or only primed, and which of several times is that of the last coat. Sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import { choicesOf } from '#engine/hear/facts.ts';
import { hoursOf } from '#engine/hear/times.ts';
import { ear, mannerIn } from './small-ear.ts';

const told = (text: string, name: string): string => {
  const { words, matches, manner } = mannerIn(text);
  const found = choicesOf(ear, text, words, matches, manner);
  const fact = found.facts.find((one) => one.fact === name && one.sure >= 0.7);
  const among = found.among.find((one) => one.fact === name);
  return String(fact?.value ?? among?.values.join('|') ?? 'none');
};

describe.each<[name: string, rows: readonly (readonly [text: string, wanted: string])[]]>([
  [
    'base',
    [
      ['stain', 'stain'],
      ['oil stain', 'stain'],
      ['no stain', 'none'],
      ['can i stain it', 'none'],
      ['bare wood', 'bare-wood'],
      ['bare wood and stain', 'stain'],
      ['bare wood, primed', 'none'],
      ['primer on bare wood', 'none'],
      ['old finish', 'old-finish'],
      ['one day old finish', 'none'],
      ['one week old finish', 'none'],
      ['refinishing it', 'old-finish'],
      ['refinishing it with stain', 'stain'],
      ['stripped the old finish, stain', 'stain'],
      ['stripped the old finish', 'old-finish'],
      ['sanded the old finish off, stain', 'stain'],
      ['sanded the varnish away, old finish and stain', 'stain'],
      ['sanded it well, old finish, bare wood', 'bare-wood'],
      ['scraped it down, bare wood and stain', 'stain'],
      ['removed the old finish, bare wood', 'bare-wood'],
      ['chalk paint over old finish', 'chalk-paint'],
      ['latex over old finish', 'latex-paint'],
      ['built a table', 'bare-wood'],
      ['made it of oak', 'bare-wood'],
      ['built it. A table', 'none'],
      ['built it long ago and far from here for a table', 'none'],
      ['a table built', 'none'],
      ['an oak slab', 'bare-wood'],
      ['a slab', 'bare-wood'],
      ['built a painted table', 'none'],
      ['built an old table', 'none'],
      ['built a table, stain on it', 'stain'],
    ],
  ],
  [
    'base-tone',
    [
      ['oak', 'wood'],
      ['dark oak', 'dark'],
      ['white oak', 'light'],
      ['painted oak', 'none'],
      ['painted dark', 'dark'],
      ['paint thinner on oak', 'wood'],
      ['paint, thinner, oak', 'none'],
      ['primer on oak', 'none'],
      ['dark wax on oak', 'dark'],
      ['no dark, oak', 'wood'],
    ],
  ],
  [
    'piece',
    [
      ['a table', 'tabletop'],
      ['a table and a crib', 'crib'],
      ['an antique table', 'valuable'],
      ['antique white', 'none'],
      ['antique, white', 'valuable'],
      ['should i oil my table', 'tabletop'],
      ['no table', 'none'],
      ['it wont stick to my table', 'tabletop'],
      ['it does not lie on the table', 'tabletop'],
      ['not a table', 'none'],
      ['without a table', 'none'],
      ['table salt', 'none'],
    ],
  ],
  [
    'applicator',
    [
      ['brush', 'brush'],
      ['gun', 'spray-gun'],
      ['spray can', 'aerosol'],
      ['primed with a spray can, coats with a gun', 'spray-gun'],
      ['primed with a spray can', 'aerosol'],
      ['primer and coats with a spray can', 'aerosol'],
      ['spray can and gun', 'aerosol'],
    ],
  ],
  [
    'sheen',
    [
      ['gloss', 'gloss'],
      ['gloss latex, lacquer', 'none'],
      ['gloss latex', 'gloss'],
      ['gloss, latex, lacquer', 'gloss'],
      ['gloss wall paint, lacquer', 'none'],
      ['gloss lacquer, latex below', 'gloss'],
      ['no gloss', 'none'],
      ['want to have gloss', 'none'],
    ],
  ],
  [
    'family',
    [
      ['lacquer', 'lacquer'],
      ['lacquer thinner', 'none'],
      ['oil stain', 'none'],
      ['lacquer could be', 'none'],
      ['maybe lacquer', 'none'],
      ['I think it is lacquer', 'none'],
      ['usually lacquer', 'none'],
      ['I think so. It is lacquer', 'lacquer'],
      ['I think but it is lacquer', 'lacquer'],
      ['lacquer over shellac', 'lacquer'],
      ['shellac over lacquer', 'shellac'],
      ['no lacquer, shellac', 'shellac'],
      ['poly', 'oil-based|water-based'],
      ['poly (oil)', 'oil-based'],
      ['poly and oil', 'oil'],
      ['varnish (oil)', 'oil-based'],
      ['table (oil)', 'oil'],
      ['shellac, then poly', 'oil-based|water-based'],
      ['poly, then shellac', 'shellac'],
      ['my uncle swears by shellac', 'none'],
    ],
  ],
  [
    'age',
    [
      ['old', 'unknown'],
      ['not old', 'none'],
      ['a chest of 1936', 'before-1993'],
      ['old, of 1936', 'before-1993'],
      ['two days old', 'none'],
      ['is it old?', 'unknown'],
    ],
  ],
])('%s', (name, rows) => {
  it.each(rows)('%s: %s', (text, wanted) => {
    expect(told(text, name)).toBe(wanted);
  });
});

const hours = (text: string) => {
  const { words, matches, manner } = mannerIn(text);
  const [found] = hoursOf(ear, words, matches, manner);
  return found && found.sure >= 0.7 ? Number(found.value) : undefined;
};

describe('hours since the coat', () => {
  it.each<[string, number | undefined]>([
    ['brushed it two days ago', 48],
    ['I laid it two days ago', 48],
    ['two days, sticky', 48],
    ['it has been two days', 48],
    ['after two days it is sticky', 48],
    ['two days later bubbles', 48],
    ['two days later we left', undefined],
    ['the coat has had two days', 48],
    ['two days so far, sticky', 48],
    ['two weeks of drying', 336],
    ['now, at 22 hours, sticky', 22],
    ['not even two days and sticky', 48],
    ['I bought two days of it', undefined],
    ['want to wait two days', undefined],
    ['the can says two days', undefined],
    ['the poly is two days old', 48],
    ['the dog is two days old', undefined],
    ['brushed it overnight', 12],
    ['laid it yesterday', 24],
    ['overnight it is sticky', 12],
    ['slept overnight', undefined],
    ['it has been overnight, sticky', 12],
    ['want it overnight', undefined],
    ['brushed it two days ago, saw it yesterday', 48],
    ['brushed it two days ago. Yesterday we saw bubbles', 48],
    ['brushed it two days ago. Yesterday I brushed it', 24],
    ['waited two days, brushed on a coat', 48],
    ['waited two days after the last coat, soft', 48],
    ['two days since the last coat, a week since the first', 48],
    ['laid it five days ago, three days later soft', 120],
    ['three days later soft, laid it five days ago', 120],
    ['day three and it is soft', 66],
    ['soft on the third day', 66],
    ['no time', undefined],
    ['the can of poly gelled two days ago', undefined],
  ])('%s: %s', (text, wanted) => {
    const value = hours(text);
    if (wanted === undefined) expect(value).toBeUndefined();
    else expect(value).toBeCloseTo(wanted, 1);
  });
  it('are told about as wide as they are said', () => {
    const of = (text: string) => {
      const { words, matches, manner } = mannerIn(text);
      return hoursOf(ear, words, matches, manner)[0];
    };
    const lone = of('brushed it two days ago');
    expect(lone?.against).toEqual([]);
    expect(lone?.range?.[0]).toBeLessThan(48);
    expect(lone?.range?.[1]).toBeGreaterThan(48);
    // What is said to be about a time is told so wide.
    expect((lone?.range?.[0] ?? 0) / 48).toBeGreaterThan(0.5);
    expect((lone?.range?.[1] ?? 0) / 48).toBeLessThan(2);
  });
  it('what was laid again after it makes it less sure', () => {
    const sure = (text: string) => {
      const { words, matches, manner } = mannerIn(text);
      return hoursOf(ear, words, matches, manner)[0]?.sure ?? 0;
    };
    expect(sure('two days. Then sprayed it')).toBeLessThan(sure('two days. Then saw it'));
    expect(sure('two days and still soft. Then sprayed it')).toBeGreaterThan(
      sure('two days. Then sprayed it'),
    );
  });
});
