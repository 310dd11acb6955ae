/** Hands a file to the browser's downloads. */
export const saveFile = (name: string, type: string, text: string): void => {
  const anchor = document.createElement('a');
  anchor.href = URL.createObjectURL(new Blob([text], { type }));
  anchor.download = name;
  anchor.click();
  setTimeout(() => URL.revokeObjectURL(anchor.href), 60_000);
};

/** A name that every file system takes. */
export const fileName = (name: string): string =>
  name
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 60) || 'card';

/** Saves what lies in the store as it is, also where it is no card any more. */
export const saveRaw = (id: string, raw: unknown): void =>
  saveFile(`halfdry-${fileName(id)}-as-found.json`, 'application/json', JSON.stringify(raw, undefined, 2));
