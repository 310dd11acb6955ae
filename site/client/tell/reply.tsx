import type { Reply } from '#engine/hear.ts';
import { useCopied } from '../shared/use-copied.ts';

type Props = {
  readonly answer: Reply;
  /** The words are somebody else's: an answer is what is wanted. */
  readonly open: boolean;
};

/** A reply to somebody else's post, to copy; the long one behind the short. Never surer than what stands above it. */
export const ReplyToCopy = ({ answer, open }: Props) => {
  const [said, copy] = useCopied('text');
  return (
    <details class="reply" open={open}>
      <summary>Answer somebody with this</summary>
      <p class="post">{answer.short}</p>
      <button type="button" class="quiet" onClick={() => copy(answer.short)}>
        <b>Copy it</b>
      </button>
      <details>
        <summary>A longer one</summary>
        <p class="post">{answer.long}</p>
        <button type="button" class="quiet" onClick={() => copy(answer.long)}>
          <b>Copy the long one</b>
        </button>
      </details>
      <p role="status">{said}</p>
    </details>
  );
};
