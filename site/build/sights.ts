import { entryOf } from '#engine/entry-of.ts';
import type { Entry } from '#engine/index.ts';
import type { Sign } from '#engine/model/defect.ts';
import { FREQUENCY } from '#engine/model/frequency.ts';

type Sight = { readonly title: string; readonly signs: readonly string[] };

/** What catches the eye, in the order in which eyes take it. A defect stands under the first that it shows. */
const SIGHTS: readonly Sight[] = [
  { title: 'White, milky or foggy', signs: ['white-or-milky'] },
  { title: 'Still sticky or soft', signs: ['still-tacky', 'nail-dents-it'] },
  {
    title: 'Wrinkled, cracked or flaking',
    signs: ['wrinkled', 'cracked', 'comes-off-in-flakes', 'film-is-weak'],
  },
  {
    title: 'A ring, a print or a mark from use',
    signs: ['ring-or-object-shape', 'weave-or-print-pattern', 'came-in-use'],
  },
  { title: 'Spots, bubbles and craters', signs: ['round-spots'] },
  {
    title: 'Hairs, dust and other bits',
    signs: ['thread-shaped', 'feels-like-sandpaper', 'bits-in-the-can', 'small-and-separate'],
  },
  { title: 'Runs, drips and thick edges', signs: ['hangs-down', 'follows-an-edge'] },
  { title: 'Lines and bands', signs: ['lines-or-bands', 'parallel-ridges'] },
  {
    title: 'Color wrong or missing',
    signs: ['colored-stain', 'appeared-after-sanding', 'base-shows-through'],
  },
  { title: 'Shiny or dull patches', signs: ['sheen-only'] },
  { title: 'Runs, drips and thick edges', signs: ['worst-where-thick'] },
  { title: 'Rough or bumpy', signs: ['felt-with-eyes-shut', 'stands-up', 'pebbled-all-over'] },
];

const OTHER = 'Something else';

/** Defects by what is seen, each once, what is met and asked about most often first; a heading without any is left out. */
export const bySight = (defects: readonly Entry<'defect'>[]) => {
  const groups = new Map<string, Entry<'defect'>[]>();
  for (const { title } of SIGHTS) groups.set(title, []);
  for (const defect of defects) {
    const shows = (how: Sign) =>
      SIGHTS.find((one) => one.signs.some((sign) => entryOf(defect.signs, sign) === how));
    const sight = shows('yes') ?? shows('mostly-yes');
    const title = sight?.title ?? OTHER;
    groups.set(title, [...(groups.get(title) ?? []), defect]);
  }
  const oftenFirst = (a: Entry<'defect'>, b: Entry<'defect'>) =>
    FREQUENCY[b.often] - FREQUENCY[a.often] || b.also.length - a.also.length || (a.name < b.name ? -1 : 1);
  return [...groups]
    .filter(([, found]) => found.length)
    .map(([title, found]) => ({ title, defects: found.toSorted(oftenFirst) }));
};
