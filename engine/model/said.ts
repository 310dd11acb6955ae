import { z } from 'zod';
import { STARTS } from './starts.ts';

/** The tools of the site, which the search finds beside the pages of the knowledge: their addresses. */
export const TOOL_PAGES = [
  'clock',
  'schedule',
  'jobs',
  'learn',
  'first-coat',
  'which-coat',
  'learn/practice/sheet',
  'learn/wall-card',
  'learn/sign-key',
  'learn/board-sheet',
  'learn/show',
  'learn/pictures',
] as const;

/** The name of a page in what people said: the id of a flaw, else its kind and id. */
export const PageName = z
  .string()
  .regex(
    new RegExp(
      `^(?:page/(?:${TOOL_PAGES.join('|')})|(?:(?:rule|remedy|lesson|product|term)/)?[a-z][a-z0-9]*(?:-[a-z0-9]+)*)$`,
    ),
    `write the name of a flaw, or rule/…, remedy/…, lesson/…, product/…, term/…, or page/ with one of ${TOOL_PAGES.join(', ')}`,
  )
  .register(STARTS, {
    starts: [
      ...TOOL_PAGES.map((tool) => `page/${tool}`),
      ...['rule', 'remedy', 'lesson', 'product', 'term'].map((kind) => `${kind}/`),
    ],
  });
const said = z.coerce.string().min(2);

/** content/hear/pages.yaml: what people say when they want a page. */
export const SaidOfPages = z.strictObject({
  tools: z.array(
    z.strictObject({
      id: z.enum(TOOL_PAGES),
      title: z.string(),
      says: z.string().min(20).describe('A line for the list of hits.'),
      also: z.array(said).min(2),
    }),
  ),
  said: z
    .record(PageName, z.array(said))
    .describe('Page → what people say; elsewhere: what is of other matters.'),
});
export type SaidOfPages = z.infer<typeof SaidOfPages>;

/** content/hear/imagined.yaml: what strangers might type who want a page. */
export const Imagined = SaidOfPages.pick({ said: true });
export type Imagined = z.infer<typeof Imagined>;

/** content/hear/collected.yaml: what strangers typed, with every page that would be right, the likeliest first. */
export const Collected = z.strictObject({
  phrases: z.array(
    z.strictObject({ say: said, is: z.array(PageName).describe('None: it is of other matters.') }),
  ),
});
export type Collected = z.infer<typeof Collected>;
