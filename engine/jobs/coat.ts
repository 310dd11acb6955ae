import type { LaidCoat } from '../clock/coat.ts';
import type { CardCoat, JobCard } from '../model/job-card.ts';
import type { CanLabel } from '../schedule/job.ts';
import { inOrder } from './card.ts';
import { flawOver } from './open-flaw.ts';

/** A copy without the keys that hold nothing, which the types of the engine do not allow. */
const kept = <T extends object>(value: T) =>
  Object.fromEntries(Object.entries(value).filter(([, inner]) => inner !== undefined));

/** The coats as they were laid, the first below. */
export const coatsInOrder = (card: JobCard): readonly CardCoat[] => inOrder(card.coats);

/** What the can of this coat says: its own label, or the card's where it is the product that was planned. */
export const labelOf = (card: JobCard, coat: CardCoat): CanLabel | undefined => {
  const label = coat.label ?? (coat.product === card.product ? card.label : undefined);
  if (!label) return undefined;
  const { minutes, limits, climate, ...rest } = label;
  return {
    ...kept(rest),
    minutes: kept(minutes),
    ...(climate && { climate: kept(climate) }),
    ...(limits && { limits: kept(limits) }),
  } as CanLabel;
};

const alone = (card: JobCard, coat: CardCoat, coats: readonly CardCoat[]): LaidCoat => {
  const { note: _note, label: _label, ...laid } = coat;
  return {
    ...laid,
    piece: card.name,
    card: card.id,
    label: labelOf(card, coat),
    coatNumber: coats.findIndex(({ id }) => id === coat.id) + 1 || coats.length + 1,
    baseTone: card.tone,
    sheen: card.sheen,
    age: card.age,
    ...(card.night && { night: card.night }),
  };
};

/** A coat of a card as the clock reads it, with the coats below it, which cure on. */
export const laidCoatOf = (card: JobCard, coat: CardCoat): LaidCoat => {
  const coats = coatsInOrder(card);
  const top = alone(card, coat, coats);
  const below = coats
    .slice(0, top.coatNumber - 1)
    .filter(({ id }) => id !== coat.id)
    .map((one) => alone(card, one, coats))
    .toReversed();
  const { finishedAt } = card;
  const flaw = coats.at(-1)?.id === coat.id ? flawOver(card) : undefined;
  return {
    ...top,
    ...(finishedAt !== undefined && finishedAt >= coat.laidAt && { last: true }),
    ...(flaw && { flaw }),
    ...(below.length && { below }),
  };
};
