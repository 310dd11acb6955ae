import { toldApart } from '#engine/plain/apart.ts';
import { choices } from '../../../shared/choices.ts';
import { plainId } from '../../shared/plain-id.ts';
import { sayDateTime } from '../../shared/say-date.ts';
import type { Listed } from '../store/listed.ts';

/** What is said beside the names of cards that are called alike, by their ids. */
export const cardsApart = (listed: readonly Listed[]): ReadonlyMap<string, string> =>
  toldApart(
    listed.flatMap(({ summary }) => summary ?? []),
    [
      ({ kind }) => choices.piece.values[kind].toLowerCase(),
      ({ lastCoat }) => (lastCoat ? plainId(lastCoat.product).toLowerCase() : 'no coat yet'),
      ({ lastCoat }) => (lastCoat ? `last coat ${sayDateTime(lastCoat.laidAt)}` : ''),
      ({ changedAt }) => `changed ${sayDateTime(changedAt)}`,
    ],
  );
