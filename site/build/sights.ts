import type { Entry } from '#engine/index.ts';
import type { Sign } from '#engine/model/defect.ts';
import { FREQUENCY } from '#engine/model/frequency.ts';
import { entryOf } from '#engine/plain/entry-of.ts';

type Sight = {
  readonly title: string;
  readonly signs: readonly string[];
  /** The flaw whose picture stands for the heading; where none is named, the first of the list that has one. */
  readonly face?: string;
  /** Flaws that stand under another heading first, and that eyes look for here as well. */
  readonly also?: readonly string[];
};

/** What catches the eye, in the order in which eyes take it. A defect stands under the first that it shows, and where it is looked for as well. */
const SIGHTS: readonly Sight[] = [
  {
    title: 'White, milky or foggy',
    signs: ['white-or-milky'],
    also: ['frosted-oil', 'dry-spray', 'soapy-streaks', 'spirit-damage', 'wax-in-the-grain'],
  },
  {
    title: 'Still sticky or soft',
    signs: ['still-tacky', 'nail-dents-it'],
    face: 'print-marks',
    also: ['product-gone-off', 'oil-bleed-back', 'oil-sweat', 'print-marks', 'wax-smears'],
  },
  {
    title: 'Wrinkled, cracked or flaking',
    signs: ['wrinkled', 'cracked', 'comes-off-in-flakes', 'film-is-weak'],
    also: ['wrinkled-oil', 'shellac-crazing', 'wax-under-finish', 'wax-lifts-paint'],
  },
  {
    title: 'A ring, a print or a mark from use',
    signs: ['ring-or-object-shape', 'weave-or-print-pattern', 'came-in-use'],
    face: 'white-rings',
    also: [
      'white-rings',
      'heat-marks',
      'print-marks',
      'spirit-damage',
      'water-marks-in-oil',
      'water-spots-in-wax',
    ],
  },
  {
    title: 'Spots, bubbles and craters',
    signs: ['round-spots'],
    also: ['crawling', 'missed-spots', 'dull-spots', 'rust-specks', 'oil-bleed-back', 'spatter'],
  },
  {
    title: 'Hairs, dust and other bits',
    signs: ['thread-shaped', 'feels-like-sandpaper', 'bits-in-the-can', 'small-and-separate'],
    also: ['product-gone-off', 'cobwebs', 'spatter', 'rough-after-oil'],
  },
  { title: 'Runs, drips and thick edges', signs: ['hangs-down', 'follows-an-edge'] },
  {
    title: 'Lines and bands',
    signs: ['lines-or-bands', 'parallel-ridges'],
    face: 'brush-marks',
    also: ['cracking', 'sanding-scratches', 'telegraphing', 'soapy-streaks', 'wax-smears', 'shellac-drag'],
  },
  {
    title: 'Color wrong or missing',
    signs: ['colored-stain', 'appeared-after-sanding', 'base-shows-through'],
    also: [
      'white-rings',
      'blotchy-oil',
      'dark-wax-blotches',
      'color-drag',
      'water-marks-in-oil',
      'heat-marks',
    ],
  },
  {
    title: 'Shiny or dull patches',
    signs: ['sheen-only'],
    also: [
      'dull-spots',
      'dry-patches-in-oil',
      'frosted-oil',
      'missed-spots',
      'shiny-rub-marks',
      'wax-will-not-buff',
    ],
  },
  { title: 'Runs, drips and thick edges', signs: ['worst-where-thick'] },
  {
    title: 'Rough or bumpy',
    signs: ['felt-with-eyes-shut', 'stands-up', 'pebbled-all-over'],
    also: [
      'raised-grain',
      'dry-spray',
      'rough-after-oil',
      'hairs-and-dust',
      'bubbles',
      'spatter',
      'brush-marks',
      'roller-stipple',
      'wrinkling',
      'runs-and-sags',
    ],
  },
];

const OTHER = 'Something else';

/** Defects by what is seen, with `once` each under one heading, what is met and asked about most often first; a heading without any is left out. */
export const bySight = (defects: readonly Entry<'defect'>[], { once = false } = {}) => {
  const groups = new Map<string, Entry<'defect'>[]>();
  for (const { title } of SIGHTS) groups.set(title, []);
  for (const defect of defects) {
    const shows = (how: Sign) =>
      SIGHTS.find((one) => one.signs.some((sign) => entryOf(defect.signs, sign) === how));
    const sight = shows('yes') ?? shows('mostly-yes');
    const title = sight?.title ?? OTHER;
    const also = once ? [] : SIGHTS.flatMap((one) => (one.also?.includes(defect.id) ? [one.title] : []));
    for (const heading of new Set([title, ...also]))
      groups.set(heading, [...(groups.get(heading) ?? []), defect]);
  }
  const oftenFirst = (a: Entry<'defect'>, b: Entry<'defect'>) =>
    FREQUENCY[b.often] - FREQUENCY[a.often] || b.also.length - a.also.length || (a.name < b.name ? -1 : 1);
  return [...groups]
    .filter(([, found]) => found.length)
    .map(([title, found]) => {
      const defects = found.toSorted(oftenFirst);
      const named = SIGHTS.find((one) => one.title === title)?.face;
      const face = defects.find(({ id }) => id === named) ?? defects.find(({ boards }) => boards.length);
      return { title, defects, face };
    });
};

/** The groups of the page of all flaws, each with the place on it where it begins. */
export const groupsOf = (defects: readonly Entry<'defect'>[]) =>
  bySight(defects).map((group, index) => ({ ...group, id: `group-${index + 1}` }));
