import { useState } from 'preact/hooks';
import { copyText } from './copy-text.ts';

/** Copies a text at a tap, and what is said of that; `what` is what is marked by hand where it can not be copied. */
export const useCopied = (
  what: 'line' | 'link' | 'text',
): readonly [said: string, copy: (text: string) => void, forget: () => void] => {
  const [said, setSaid] = useState('');
  const copy = async (text: string) =>
    setSaid(
      (await copyText(text))
        ? 'Copied.'
        : `This browser does not let it be copied. Mark the ${what} instead.`,
    );
  return [said, (text) => void copy(text), () => setSaid('')];
};
