import type { Entry } from '#engine/index.ts';
import type { Sign } from '#engine/model/defect.ts';
import { FREQUENCY } from '#engine/model/frequency.ts';
import { entryOf } from '#engine/plain/entry-of.ts';
import { readSights } from '../../content/tools/sights.ts';
import { knowledge } from './knowledge.ts';

const { groups: SIGHTS, rest: OTHER } = readSights(knowledge, process.cwd());

/** The heading that a flaw stands under: by what it surely shows, else by what it mostly shows. */
const headingOf = ({ signs }: Entry<'defect'>): string => {
  const shown = (how: Sign, by: 'signs' | 'last') =>
    SIGHTS.find((one) => one[by].some((sign) => entryOf(signs, sign) === how))?.title;
  for (const how of ['yes', 'mostly-yes'] as const) {
    const title = shown(how, 'signs') ?? shown(how, 'last');
    if (title) return title;
  }
  return OTHER;
};

/** Defects by what is seen, with `once` each under one heading, what is met and asked about most often first; a heading without any is left out. */
export const bySight = (defects: readonly Entry<'defect'>[], { once = false } = {}) => {
  const groups = new Map<string, Entry<'defect'>[]>();
  for (const { title } of SIGHTS) groups.set(title, []);
  for (const defect of defects) {
    const title = headingOf(defect);
    const also = once
      ? []
      : SIGHTS.flatMap((one) => (one.also.some((id) => id === defect.id) ? [one.title] : []));
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
