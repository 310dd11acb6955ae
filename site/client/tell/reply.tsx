import type { Reply } from '#engine/hear.ts';
import { CopyButton } from '../shared/copy-button.tsx';

type Props = {
  readonly answer: Reply;
  /** The words are somebody else's: an answer is what is wanted. */
  readonly open: boolean;
};

/** A reply to somebody else's post, to copy; the long one behind the short. Never surer than what stands above it. */
export const ReplyToCopy = ({ answer, open }: Props) => (
  <details class="reply" open={open}>
    <summary>Answer somebody with this</summary>
    <p class="post">{answer.short}</p>
    <CopyButton says="Copy it" text={answer.short} what="text" />
    <details>
      <summary>A longer answer</summary>
      <p class="post">{answer.long}</p>
      <CopyButton says="Copy the longer answer" text={answer.long} what="text" />
    </details>
  </details>
);
