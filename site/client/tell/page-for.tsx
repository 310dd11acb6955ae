import type { OfferedPage } from '#engine/hear.ts';
import { upper } from '#engine/plain/text.ts';

type Props = Omit<OfferedPage, 'id'> & {
  /** What is said first of what was asked. */
  readonly answer?: string | undefined;
};

/** What is asked is answered in a few sentences and by a page, not by the questions about a flaw. */
export const PageFor = ({ url, title, says, answer }: Props) => (
  <section class="page-for">
    {answer && <p>{answer}</p>}
    <h2>{answer ? 'The whole of it' : 'A page for that'}</h2>
    <a class="tape strip" href={url}>
      <b>{upper(title)}</b> {says !== answer && <span>{says}</span>}
    </a>
  </section>
);
