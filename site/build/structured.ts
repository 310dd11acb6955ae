/** What search engines may read of a page, in the words of schema.org. */
import type { BreadcrumbList, TechArticle, WithContext } from 'schema-dts';
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

type Page = {
  readonly url: string;
  readonly name: string;
  readonly summary: string;
  readonly changes: readonly { readonly on: string }[];
};

const article = (
  { url, name, summary, changes }: Page,
  also: readonly string[],
): WithContext<TechArticle> => {
  const date = changed(changes);
  return {
    '@context': CONTEXT,
    '@type': 'TechArticle',
    headline: name,
    description: summary,
    ...(also.length ? { alternativeHeadline: also } : {}),
    url: absolute(url),
    image: absolute(cardImageUrl(url)),
    ...(date ? { dateModified: date } : {}),
  };
};

/**
 * A repair's page is an article and no HowTo: that would hand on its steps without the stops and cautions that stand
 * before them, and those for another piece beside those for hers.
 */
export const remedyData = (remedy: Entry<'remedy'>) => {
  const url = remedyUrl(remedy.id);
  return [
    article({ ...remedy, url }, []),
    crumbs([
      ['Halfdry', HOME],
      ['Repairs', REMEDIES],
      [remedy.name, url],
    ]),
  ];
};

/**
 * A flaw's page is an article. It is no FAQPage and no QAPage: its questions are asked of the reader, and what
 * answers them is on her piece.
 */
export const defectData = (defect: Entry<'defect'>) => {
  const url = defectUrl(defect.id);
  return [
    article({ ...defect, url }, defect.also.slice(0, 4)),
    crumbs([
      ['Halfdry', HOME],
      ['Flaws', DEFECTS],
      [defect.name, url],
    ]),
  ];
};
