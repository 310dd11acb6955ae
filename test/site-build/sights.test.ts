/** A flaw stands under every heading where eyes look for it. What is looked for where: common practice, no source. */
import { expect, it } from 'vitest';
import { bySight } from '../../site/build/sights.ts';
import { known } from '../content/real/knowledge.ts';

const groups = bySight(known.defects);
const under = (title: string) => groups.find((group) => group.title === title)?.defects.map(({ id }) => id);

it.each([
  ['Rough or bumpy', ['raised-grain', 'dry-spray', 'rough-after-oil', 'orange-peel']],
  ['White, milky or foggy', ['blush', 'cloudy-film', 'white-rings', 'frosted-oil']],
  ['Still sticky or soft', ['tacky-film', 'soft-film', 'sticky-oil', 'sticky-wax']],
  ['Wrinkled, cracked or flaking', ['cracking', 'peeling', 'wrinkling', 'wrinkled-oil', 'shellac-crazing']],
  ['A ring, a print or a mark from use', ['white-rings', 'heat-marks', 'print-marks', 'water-marks-in-oil']],
  ['Spots, bubbles and craters', ['bubbles', 'fisheyes', 'crawling', 'rust-specks']],
  ['Hairs, dust and other bits', ['hairs-and-dust', 'cobwebs']],
  ['Lines and bands', ['brush-marks', 'lap-marks', 'cracking', 'sanding-scratches']],
  ['Color wrong or missing', ['yellowing', 'stain-bleed', 'white-rings', 'sand-through']],
  ['Shiny or dull patches', ['dull-spots', 'patchy-sheen', 'shiny-rub-marks']],
  ['Runs, drips and thick edges', ['runs-and-sags', 'fat-edges', 'pools']],
])('%s', (title, flaws) => {
  expect(under(title)).toEqual(expect.arrayContaining(flaws));
});

it('has every flaw, none twice under one heading, and each once where that is asked', () => {
  const all = groups.flatMap(({ defects }) => defects);
  expect(new Set(all).size).toBe(known.defects.length);
  for (const { defects } of groups) expect(new Set(defects).size).toBe(defects.length);
  expect(bySight(known.defects, { once: true }).flatMap(({ defects }) => defects)).toHaveLength(
    known.defects.length,
  );
  expect(groups.map(({ title }) => title)).toEqual(
    bySight(known.defects, { once: true }).map(({ title }) => title),
  );
});

it('stands for each heading with the board of a flaw that is under it', () => {
  for (const { title, defects, face } of groups) {
    expect(face?.boards.length, title).toBeGreaterThan(0);
    expect(defects).toContain(face);
  }
  // Two headings never show one picture.
  expect(new Set(groups.map(({ face }) => face?.id)).size).toBe(groups.length);
  expect(groups.find(({ title }) => title === 'Lines and bands')?.face?.id).toBe('brush-marks');
});
