/** What search engines may read of a page, in the words of schema.org. */
import type { BreadcrumbList, HowTo, TechArticle, WithContext } from 'schema-dts';
import type { Entry } from '#engine/index.ts';
import { cardImageUrl, DEFECTS, defectUrl, HOME, REMEDIES, remedyUrl } from '../shared/urls.ts';
import { absolute } from './address.ts';

const CONTEXT = 'https://schema.org' as const;

/** The way from the first page; the last crumb is the page itself. */
const crumbs = (way: readonly (readonly [name: string, url: string])[]): WithContext<BreadcrumbList> => ({
  '@context': CONTEXT,
  '@type': 'BreadcrumbList',
  itemListElement: way.map(([name, url], index) => ({
    '@type': 'ListItem',
    position: index + 1,
    name,
    item: absolute(url),
  })),
});

const changed = (changes: readonly { on: string }[]): string | undefined =>
  changes
    .map(({ on }) => on)
    .sort()
    .at(-1);

/** A repair is a list of steps toward a result, so it is a HowTo. */
export const remedyData = (remedy: Entry<'remedy'>) => {
  const howTo: WithContext<HowTo> = {
    '@context': CONTEXT,
    '@type': 'HowTo',
    name: remedy.name,
    description: remedy.summary,
    url: absolute(remedyUrl(remedy.id)),
    image: absolute(cardImageUrl(remedyUrl(remedy.id))),
    step: remedy.steps.map(({ say }, index) => ({ '@type': 'HowToStep', position: index + 1, text: say })),
  };
  return [
    howTo,
    crumbs([
      ['Halfdry', HOME],
      ['Repairs', REMEDIES],
      [remedy.name, remedyUrl(remedy.id)],
    ]),
  ];
};

/**
 * A flaw's page is an article. It is no FAQPage and no QAPage: its questions are asked of the reader, and what
 * answers them is on her piece.
 */
export const defectData = (defect: Entry<'defect'>) => {
  const date = changed(defect.changes);
  const article: WithContext<TechArticle> = {
    '@context': CONTEXT,
    '@type': 'TechArticle',
    headline: defect.name,
    description: defect.summary,
    alternativeHeadline: defect.also.slice(0, 4),
    url: absolute(defectUrl(defect.id)),
    image: absolute(cardImageUrl(defectUrl(defect.id))),
    ...(date ? { dateModified: date } : {}),
  };
  return [
    article,
    crumbs([
      ['Halfdry', HOME],
      ['Flaws', DEFECTS],
      [defect.name, defectUrl(defect.id)],
    ]),
  ];
};
