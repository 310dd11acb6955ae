import { type FindIndex, find } from '#engine/find.ts';
import { hitUrl } from '../../shared/urls.ts';

/** A page is offered before any question only where the search is as sure of it as that. */
const SURE = 0.7;

type Props = { readonly index: FindIndex; readonly text: string };

/** What is asked of something yet to be laid is answered by a page, not by the questions about a flaw. */
export const PageFor = ({ index, text }: Props) => {
  const [hit] = find(index, text, { limit: 1 });
  const url = hit?.kind === 'page' && !hit.perhaps && hit.score >= SURE && hitUrl(hit.kind, hit.id);
  if (!hit || !url) return null;
  return (
    <section class="page-for">
      <h2>A page for that</h2>
      <a class="tape strip" href={url}>
        <b>{hit.title}</b> <span>{hit.says}</span>
      </a>
    </section>
  );
};
