import { useState } from 'preact/hooks';
import type { Reply } from '#engine/hear.ts';
import { copyText } from '../shared/copy-text.ts';

/** A reply to somebody else's post, short and long, to copy. Never surer than what stands above it. */
export const ReplyToCopy = ({ answer }: { readonly answer: Reply }) => {
  const [said, setSaid] = useState('');
  const copy = async (text: string) =>
    setSaid(
      (await copyText(text)) ? 'Copied.' : 'This browser does not let it be copied. Mark the text instead.',
    );
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
          <button type="button" class="quiet" onClick={() => void copy(text)}>
            <b>Copy the {name.toLowerCase()} one</b>
          </button>
        </section>
      ))}
      <p role="status">{said}</p>
    </details>
  );
};
