import { z } from 'zod';
import type { Saying } from '../plain/filled.ts';
import { SourceId } from './ids.ts';
import { saying } from './saying.ts';
import { GRADES } from './source.ts';

/** A sentence that the engine says: when it is said, and the places in it that are filled in. */
export type Said<P extends string = string> = {
  readonly when: string;
  readonly places: readonly P[];
  /** Whether it tells what is so, or what hands do: then it names its ground. */
  readonly grounded: boolean;
  /** Whether hands are off the film while it is said: then it orders no touch. */
  readonly handsOff: boolean;
};

/** What is so, or what hands do. */
export const told = <P extends string = never>(when: string, ...places: readonly P[]): Said<P> => ({
  when,
  places,
  grounded: true,
  handsOff: false,
});

/** The same, said while hands are off the film. */
export const off = <P extends string = never>(when: string, ...places: readonly P[]): Said<P> => ({
  ...told(when, ...places),
  handsOff: true,
});

/** A heading, a time, a question, or what to do in a form. */
export const named = <P extends string = never>(when: string, ...places: readonly P[]): Said<P> => ({
  when,
  places,
  grounded: false,
  handsOff: false,
});

type Groups = Readonly<Record<string, Readonly<Record<string, Said>>>>;

/** Sentences by group and id, as the engine says them. */
export type SaysOf<T extends Groups> = {
  readonly [G in keyof T]: {
    readonly [I in keyof T[G]]: T[G][I] extends Said<infer P> ? Saying<P> : never;
  };
};

const grounds = {
  grade: z.enum(GRADES).describe('How we know it.'),
  source: SourceId.optional().describe('A file in content/sources; needed for published and from-memory.'),
};

const sentence = ({ when, places }: Said) => saying(when, ...places);
const written = (said: Said) =>
  said.grounded ? z.strictObject({ say: sentence(said), ...grounds }) : sentence(said);

/** The groups of a table of sentences, each as it is written; what tells what is so, or what hands do, with its ground. */
export const sentenceShape = (groups: Groups) =>
  Object.fromEntries(
    Object.entries(groups).map(([group, rows]) => [
      group,
      z.strictObject(Object.fromEntries(Object.entries(rows).map(([id, said]) => [id, written(said)]))),
    ]),
  );

/** What is said while hands are off the film: each is a row with its ground. */
export const saidHandsOff = (groups: Groups): readonly (readonly [group: string, id: string])[] =>
  Object.entries(groups).flatMap(([group, rows]) =>
    Object.entries(rows).flatMap(([id, { handsOff }]) => (handsOff ? [[group, id] as const] : [])),
  );

type Written = string | { readonly say: string };

/** The sentences of a table alone: how we know them stays at home. */
export const sentencesOf = <T extends Groups>(
  groups: T,
  table: Readonly<Record<string, unknown>>,
): SaysOf<T> =>
  Object.fromEntries(
    Object.keys(groups).map((group) => [
      group,
      Object.fromEntries(
        Object.entries(table[group] as Readonly<Record<string, Written>>).map(([id, row]) => [
          id,
          typeof row === 'string' ? row : row.say,
        ]),
      ),
    ]),
    // The schema has every group and id, and each place of each sentence.
  ) as SaysOf<T>;
