import { type FindIndex, find } from '#engine/find.ts';
import type { Heard } from '#engine/hear.ts';
import { hitUrl } from '../../shared/urls.ts';
import { whichUrl } from '../shared/which-url.ts';

/** A page is offered before any question only where the search is as sure of it as that. */
const SURE = 0.7;
type Props = {
  readonly index: FindIndex;
  readonly heard: Heard;
  /** It is asked which top coat to take. */
  readonly which: boolean;
};

/** What is asked of something yet to be laid is answered by a page, not by the questions about a flaw. */
export const PageFor = ({ index, heard, which }: Props) => {
  const [hit] = which ? [] : find(index, heard.text, { limit: 1 });
  const url = hit?.kind === 'page' && !hit.perhaps && hit.score >= SURE && hitUrl(hit.kind, hit.id);
  const page = which
    ? { url: whichUrl(heard.facts), title: 'Which top coat for it?', says: 'One kind, with its reason' }
    : hit && url
      ? { url, title: hit.title, says: hit.says }
      : undefined;
  if (!page) return null;
  return (
    <section class="page-for">
      <h2>A page for that</h2>
      <a class="tape strip" href={page.url}>
        <b>{page.title}</b> <span>{page.says}</span>
      </a>
    </section>
  );
};
