import type { Reply } from '#engine/hear.ts';
import { useCopied } from '../shared/use-copied.ts';

/** A reply to somebody else's post, short and long, to copy. Never surer than what stands above it. */
export const ReplyToCopy = ({ answer }: { readonly answer: Reply }) => {
  const [said, copy] = useCopied('text');
  return (
    <details class="reply">
      <summary>Answer somebody with this</summary>
      {(
        [
          ['Short', answer.short],
          ['Long', answer.long],
        ] as const
      ).map(([name, text]) => (
        <section key={name}>
          <h3>{name}</h3>
          <p class="post">{text}</p>
          <button type="button" class="quiet" onClick={() => copy(text)}>
            <b>Copy the {name.toLowerCase()} one</b>
          </button>
        </section>
      ))}
      <p role="status">{said}</p>
    </details>
  );
};
