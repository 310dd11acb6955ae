/**
 * What is told of the piece, by the small lexicon: what lies below, what was stripped, made, guessed or only primed.
 * Sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import { choicesOf } from '#engine/hear/choices/choices.ts';
import { ear, mannerIn } from '../small-ear.ts';

const told = (text: string, name: string): string => {
  const { words, matches, manner } = mannerIn(text);
  const found = choicesOf(text, { ear, words, matches, manner });
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
