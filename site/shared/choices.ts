import { CHOICES } from 'virtual:choices';
import type { Choices } from '#engine/model/choices.ts';

/** What the forms ask and the words of every answer: content/choices.yaml, read when the site is built. */
export const choices: Choices = CHOICES;

type Listed = { readonly values: Readonly<Record<string, string>> };

/** The values of one choice with their words, in their order, for a form. */
export const optionsOf = ({ values }: Listed): readonly (readonly [value: string, says: string])[] =>
  Object.entries(values);
