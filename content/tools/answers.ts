import type { Answers, Prompt } from './interview.ts';

/** Asks on the terminal until an answer can be used. */
export const fromTerminal =
  (line: (question: string) => Promise<string>, print: (line: string) => void = console.log): Answers =>
  async ({ lines, ask, help, refuse }: Prompt) => {
    for (const one of lines) print(one);
    for (;;) {
      const answer = (await line(`${ask}\n> `)).trim();
      const why = answer === '?' && help ? help : refuse?.(answer);
      if (!why) return answer;
      print(`  ${why}`);
    }
  };

/** An answer of a file that can not be used, in words for its author. */
export class AnswerFault extends Error {}

/** Answers of a file that nothing asked for: look-alikes and repairs that were not named. */
export const unasked = (told: object, asked: ReadonlySet<string>): readonly string[] =>
  ['mirrors', 'decides'].flatMap((part) =>
    Object.keys((told as Record<string, object | undefined>)[part] ?? {})
      .map((key) => `${part}.${key}`)
      .filter((key) => !asked.has(key)),
  );

/** Answers from a file: `{ "name": …, "signs": { "sheen-only": "yes" } }`. Tells what was asked and how it was answered. */
export const fromFile =
  (told: unknown, print: (line: string) => void = console.log): Answers =>
  async ({ key, ask, refuse }: Prompt) => {
    const found = key
      .split('.')
      .reduce<unknown>((inner, part) => (inner as Record<string, unknown> | undefined)?.[part], told);
    const answer = Array.isArray(found) ? found.join(', ') : String(found ?? '');
    const why = refuse?.(answer);
    if (why) throw new AnswerFault(`"${answer}" at ${key}: ${why} (${ask})`);
    if (key.startsWith('signs.')) print(`  ${ask} ${answer || 'either, not told'}`);
    return answer;
  };
