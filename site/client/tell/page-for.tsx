import type { PageFor as Page } from './listen.ts';

/** What is asked is answered by a page, not by the questions about a flaw. */
export const PageFor = ({ url, title, says }: Page) => (
  <section class="page-for">
    <h2>A page for that</h2>
    <a class="tape strip" href={url}>
      <b>{title}</b> <span>{says}</span>
    </a>
  </section>
);
