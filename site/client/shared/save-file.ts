import { MINUTE_MS } from '#engine/plain/time.ts';

/** So long a browser may take to read what it is to save. */
const KEPT_FOR = MINUTE_MS;

/** Hands a file to the browser's downloads. */
export const saveBlob = (name: string, blob: Blob): void => {
  const anchor = document.createElement('a');
  anchor.href = URL.createObjectURL(blob);
  anchor.download = name;
  anchor.click();
  setTimeout(() => URL.revokeObjectURL(anchor.href), KEPT_FOR);
};

export const saveFile = (name: string, type: string, text: string): void =>
  saveBlob(name, new Blob([text], { type }));

/** A name that every file system takes. */
export const fileName = (name: string): string =>
  name
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 60) || 'card';
