import { useEffect, useState } from 'preact/hooks';
import { copyText } from './copy-text.ts';

/** So long the button itself says that it copied: a line below may lie under a thumb, or off the screen. */
const SAID_MS = 3000;

type Props = {
  readonly says: string;
  readonly text: string;
  /** What is marked by hand where it can not be copied. */
  readonly what: 'line' | 'link' | 'text';
  readonly look?: 'quiet' | 'go';
};

/** Copies a text at a tap, and says so where the finger is; aloud as well. Where it can not be copied, what to do instead. */
export const CopyButton = ({ says, text, what, look = 'quiet' }: Props) => {
  const [copied, setCopied] = useState<{ readonly ok: boolean }>();
  useEffect(() => {
    if (!copied?.ok) return undefined;
    const timer = setTimeout(() => setCopied(undefined), SAID_MS);
    return () => clearTimeout(timer);
  }, [copied]);
  const copy = async () => setCopied({ ok: await copyText(text) });
  const words = copied?.ok ? 'Copied ✓' : says;
  return (
    <>
      <button type="button" class={look} onClick={() => void copy()}>
        {look === 'quiet' ? <b>{words}</b> : words}
      </button>
      <p role="status" class={copied && !copied.ok ? 'small' : 'unseen'}>
        {copied &&
          (copied.ok ? 'Copied.' : `This browser does not let it be copied. Mark the ${what} instead.`)}
      </p>
    </>
  );
};
