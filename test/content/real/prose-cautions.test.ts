/**
 * What stands beside steps has no stop before it, so it carries its caution itself: what prevents a flaw, what to do with
 * the rest of the piece, and the text of a page. Solvent over more than a drop names the open window and no flame (a
 * fire-prevention handbook on vapor); an old face is dulled only after a lead test (the US agency counts scuff sanding
 * among what disturbs old paint); a door is shut only on water-based finish; the oil on a pad is one that never heats up.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { known } from './knowledge.ts';

type Said = { readonly where: string; readonly says: string };
const sentences = (where: string, text: string): Said[] =>
  text.split(/(?<=[.!?])\s+/).map((says) => ({ where, says }));

/** The prose below the front matter of a page. */
const proseOf = (file: string): string => readFileSync(file, 'utf8').split(/^---$/m).slice(2).join(' ');

/** Lines of a list are whole; prose is taken by its sentences. */
const said: readonly Said[] = [
  ...known.defects.flatMap(({ id, file, prevent, after }) => [
    ...prevent.map((says) => ({ where: `${id}, prevent`, says })),
    ...Object.values(after ?? {}).flatMap((text) => sentences(`${id}, after`, text ?? '')),
    ...sentences(`${id}, text`, proseOf(file)),
  ]),
  ...known.remedies.flatMap(({ id, file, prevent }) => [
    ...prevent.map((says) => ({ where: `${id}, prevent`, says })),
    ...sentences(`${id}, text`, proseOf(file)),
  ]),
];
const steps: readonly Said[] = known.remedies.flatMap(({ id, steps: all }) =>
  all.map(({ say }) => ({ where: `${id}, step`, says: say })),
);

const SOLVENT = /\b(mineral spirits|alcohol|naphtha|lacquer thinner|acetone)\b/i;
const SPREAD = /\b(wet|rub|wipe|wash|flood|clean) (the|a|every|each|all|it|them)\b[^,;:]*\b(with|in)\b/i;
const withoutAir = ({ says }: Said): boolean =>
  SOLVENT.test(says) && SPREAD.test(says) && !/\b(no flame|without)\b/i.test(says);

const DULLS = /\b(sand|dull|scuff|scrape|strip)(ed|s)?\b/i;
const OLD = /\bold (finish|paint|base|piece)\b|\bsecond-hand\b|\bevery shiny\b|\ba shiny or\b/i;
const untested = ({ says }: Said): boolean =>
  DULLS.test(says) && OLD.test(says) && !/\b(lead test|tested for lead|may hold lead|never)\b/i.test(says);

const SHUT = /\b(shut|close) the (door|window)s?\b|\b(door|window)s? (is |are )?shut\b/i;
const shutIn = ({ says }: Said): boolean => SHUT.test(says) && !/\b(water-based|spirits)\b/i.test(says);

const PAD_OIL = /\bdrop of (?!(mineral|the same) oil)[\w ]*oil\b/i;
const wrongOil = ({ says }: Said): boolean => PAD_OIL.test(says);

/** Beside steps nothing tells of masks and flames, so no line there sends someone to the gun or the can. */
const SPRAYS =
  /^(?:over [\w -]+, )?spray (?!a (?:test )?card|from|insides|the near|cleaner|the cloth)\b|^(?!no |never ).*\bor spray\b(?!-)|\bspray (it|black)\b/i;
const sendsToSpray = ({ where, says }: Said): boolean =>
  SPRAYS.test(says.replace(/\b(never|not|no|while|as|before) (you )?spray\b/gi, '')) &&
  !/spray|peel|nib/.test(where.split(',')[0] ?? '');

/** Alcohol on a pad is methanol in part: its wetness is tried on paper or glass. */
const onSkin = ({ says }: Said): boolean =>
  /\bcool(s|ed)? (to |on )?(the|your) (cheek|hand|skin|lip|palm)\b|\bwet to the skin\b/i.test(says);
const asked: readonly Said[] = known.questions.flatMap(({ id, how, sure, yes, no }) =>
  [how, sure, yes, no].map((says) => ({ where: `${id}, question`, says })),
);

const told = (list: readonly Said[]): string[] => list.map(({ where, says }) => `${where}: ${says}`);

describe('what stands beside steps', () => {
  it.each([
    ['names the open window where solvent is spread', withoutAir, said, 'Wet the rest with mineral spirits.'],
    ['has an old face tested before it is dulled', untested, said, 'Clean and dull the old finish first.'],
    ['shuts no door on spirits', shutIn, [...said, ...steps], 'Vacuum, shut the door and wait.'],
    ['sends no one to spray', sendsToSpray, said, 'Spray black and navy if you can.'],
    [
      'tries no pad on skin',
      onSkin,
      [...said, ...steps, ...asked],
      'Charge it until it feels cool to the cheek.',
    ],
    ['puts no oil that heats up on a pad', wrongOil, [...said, ...steps], 'One drop of oil at a time.'],
  ] as const)('%s', (_what, isAmiss, all, broken) => {
    expect(told(all.filter(isAmiss))).toEqual([]);
    expect(isAmiss({ where: 'a broken copy', says: broken })).toBe(true);
  });

  it('is looked at on every page', () => {
    expect(new Set(said.map(({ where }) => where.split(',')[0])).size).toBe(
      new Set([...known.defects, ...known.remedies].map(({ id }) => id)).size,
    );
  });
});
