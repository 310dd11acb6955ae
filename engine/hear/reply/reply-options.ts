import type { ReplyWords } from '../../model/reply-words.ts';
import type { Stage } from '../../model/stage.ts';
import type { Heard } from '../words/heard.ts';

/** What a reply is made with, beside what was considered. */
export type ReplyOptions = {
  /** What a reply says, and what it listens for. */
  readonly words: ReplyWords;
  /** What can not wait for any question, as a spill that stands there; it takes the place of leaving it alone. */
  readonly atOnce?: string | undefined;
  /** The address of the page of a flaw, at the stage where that is known, with its site. */
  readonly linkTo: (defect: string, stage?: Stage) => string;
  /** What was told: what is told is not asked again, and what was asked about is answered first. */
  readonly heard?: Heard | undefined;
  /** The address of the page of a rule: where no flaw is told a reply leads there. */
  readonly ruleAt?: ((rule: string) => string) | undefined;
  /** The address of the page that names a top coat, where that alone is asked. */
  readonly whichAt?: string | undefined;
  /** The page that answers what is asked, where no flaw is told; that of a rule with its first sentence, which does alone. */
  readonly page?:
    | { readonly title: string; readonly at: string; readonly says?: string | undefined }
    | undefined;
  /** The address of a page by its name, for what is asked besides. */
  readonly pageAt?: ((page: string) => string | undefined) | undefined;
  /** The address where what is seen can be told anew. */
  readonly tellAt?: string | undefined;
};
