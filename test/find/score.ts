import { type FindIndex, find } from '#engine/find.ts';
import type { Phrases } from './phrases.ts';

/** Shares 0 to 1 over a set of phrases. */
export interface Score {
  readonly first: number;
  readonly inThree: number;
  readonly misspelledInThree: number;
  /** Good phrases that list nothing. */
  readonly lost: number;
  /** Off-topic phrases that list nothing, or only as perhaps. */
  readonly silent: number;
}

const share = (part: number, whole: number): number => (whole === 0 ? 1 : part / whole);

/** Scores an index on phrases. `covers`: the entries of the evidence that a document answers for; itself unless told. */
export const score = (
  index: FindIndex,
  { good, offTopic }: Phrases,
  covers: (id: string) => readonly string[] = (id) => [id],
): Score => {
  const ranks = good.map(({ say, is, kind }) => {
    const hits = find(index, say);
    return {
      kind,
      lost: hits.length === 0,
      rank: hits.findIndex(({ id }) => covers(id).some((c) => is.includes(c))),
    };
  });
  const within = (places: number, of: typeof ranks): number =>
    share(of.filter(({ rank }) => rank >= 0 && rank < places).length, of.length);
  return {
    first: within(1, ranks),
    inThree: within(3, ranks),
    misspelledInThree: within(
      3,
      ranks.filter(({ kind }) => kind === 'misspelled'),
    ),
    lost: share(ranks.filter(({ lost }) => lost).length, ranks.length),
    silent: share(
      offTopic.filter(({ say }) => find(index, say).every(({ perhaps }) => perhaps)).length,
      offTopic.length,
    ),
  };
};
