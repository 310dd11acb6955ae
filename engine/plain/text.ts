/** A text with its first letter large. */
export const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A text with its first letter small, to stand within a sentence. */
export const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** A title with a mark behind it, so that a sentence may follow. */
export const ended = (title: string): string => (/[.!?]$/.test(title) ? title : `${title}.`);

/** The first sentence, which of a caution must do alone; all of a text that never ends one. */
export const firstSentence = (text: string): string => /[\s\S]*?[.!?](?=\s|$)/.exec(text)?.[0] ?? text;
