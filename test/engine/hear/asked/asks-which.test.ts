/** Which questions ask for a kind of top coat. The texts are invented. */
import { expect, it } from 'vitest';
import { heard } from '../hearing.ts';

it.each([
  'what coat on a kitchen table',
  'what finish should I put on a kitchen table',
  'best topcoat for a dresser',
  'which poly for white cabinets',
  'what is the best clear coat over chalk paint',
  'what kind of varnish for a bar top',
  'what should I seal my bookshelf with',
  'What can I put on it to protect the paint?',
])('asks: %s', (text) => {
  expect(heard(text).asksWhich).toBe(true);
});

it.each([
  'milky over navy, still wet',
  'what is wrong with the finish on my table',
  'what happened to my varnish',
  'what grit do I sand the poly with',
  'how long does the varnish dry',
  'what removes wax from a table',
  'I brushed a clear coat on my table, what now',
  'best way to fix runs in poly',
  '',
])('does not ask: %s', (text) => {
  expect(heard(text).asksWhich).toBe(false);
});
