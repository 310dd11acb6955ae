/**
 * What saves comes first however it is told: typed badly, dictated, over two sentences, beside a flaw. What is near in
 * its words calls no one. All sentences are invented; what is to come first rests on what the rules cite (a fire service on
 * rags, trade and builders' papers on injection, a maker on hot resin, a German insurer on isocyanate cans, poison lines).
 */
import { readFileSync } from 'node:fs';
import { load } from 'js-yaml';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { understand } from '#engine/hear.ts';
import { understanding } from '../engine/hear/hearing.ts';
import { links } from '../engine/hear/links.ts';
import { oneInSo } from '../thorough.ts';

const Told = z.array(
  z.strictObject({
    told: z.string(),
    first: z.string(),
    harm: z.array(z.string()).min(5),
    near: z.array(z.string()),
  }),
);
const classes = Told.parse(load(readFileSync(new URL('./harm-told.yaml', import.meta.url), 'utf8')));
/** How a case that can not wait begins. */
const URGENT =
  /^(?:Everyone|Warm|See to|Mixed|Stop work|No spraying|No rags|Stay away|Switch|Take|Call|Out |A spill|Wet|Go to|Do not open|Press|Cool|Stop the animal)/;

const answer = (text: string): string => understand(understanding, { text }, links).answer.short;

describe.each(classes)('$told', ({ first, harm, near }) => {
  it('comes first', () => {
    const wrong = harm.filter((text) => !new RegExp(first).test(answer(text)));
    expect(wrong).toEqual([]);
  });
  it('is not heard in words that are near', () => {
    const own = new RegExp(first);
    const wrong = near.filter((text) => URGENT.test(answer(text)) || own.test(answer(text)));
    expect(wrong).toEqual([]);
  });
});

describe('a fuel heater beside a coat', () => {
  it.each([
    'A kerosene salamander held the shop at 60 while the varnish dried.',
    'There is a propane heater beside it.',
    'I ran a diesel blower overnight.',
  ])('is said whatever flaw is named with it: %s', (told) => {
    const silenced = oneInSo(4, understanding.mind.names).filter(
      (name) => !answer(`${told} ${name} now.`).includes('Do not warm the place'),
    );
    expect(silenced).toEqual([]);
  });
});
