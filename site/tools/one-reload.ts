import { readFileSync } from 'node:fs';

const FRONT = /^---\r?\n[\s\S]*?^---[ \t]*$/m;
/** As long as the framework takes to store the text of a page and to ask for another reload. */
const SECOND_RELOAD_MS = 3000;

type Send = (message: { readonly type: string; readonly path?: string }) => void;

/** The text of a page below its fields; undefined where the file is gone or half written. */
const bodyOf = (file: string): string | undefined => {
  try {
    return readFileSync(file, 'utf8').replace(FRONT, '');
  } catch {
    return undefined;
  }
};

/**
 * The framework reloads once more when it has stored the text of a changed page, which stops a page that is nearly there.
 * Where only fields have changed, the text is as it was, and that second reload is left out.
 */
export const oneReload = (files: readonly string[]) => {
  const bodies = new Map(files.map((file) => [file, bodyOf(file)]));
  let quietUntil = 0;
  return {
    edited: (file: string): void => {
      const body = bodyOf(file);
      const same = body !== undefined && bodies.get(file) === body;
      bodies.set(file, body);
      quietUntil = same ? Date.now() + SECOND_RELOAD_MS : 0;
    },
    /** `send` without the reloads that show nothing new. */
    filtered:
      (send: Send): Send =>
      (message) => {
        if (message.type === 'full-reload' && message.path === '*' && Date.now() < quietUntil) return;
        send(message);
      },
  };
};
