import type { FindKind } from '#engine/find.ts';
import { upper } from '#engine/plain/text.ts';
import { FIND_INDEX } from '../../shared/data-files.ts';
import { hitUrl } from '../../shared/urls.ts';
import hits from '../../styles/hits.css?inline';
import { fetchedOnce } from '../shared/fetch-json.ts';
import { wear } from '../shared/late-style.ts';
import { hitsFor } from './hits.ts';

wear(hits);

export type FoundPage = {
  readonly title: string;
  readonly url: string;
  readonly kind: FindKind;
  readonly id: string;
  /** A line on what the page answers. */
  readonly says: string;
  /** Listed for want of better. */
  readonly perhaps: boolean;
};

/** The index of the search. Throws a `NetworkFault`; then it is tried again at the next call. */
export const loadIndex = fetchedOnce(FIND_INDEX);

/** Pages that answer the words, best first. */
export const findPages = async (words: string, limit: number, typing = false): Promise<FoundPage[]> =>
  hitsFor(await loadIndex(), words, typing)
    .flatMap(({ title, kind, id, says, perhaps }) => {
      const url = hitUrl(kind, id);
      const name = upper(title);
      return url ? [{ title: name, url, kind, id, says, perhaps }] : [];
    })
    .slice(0, limit);
