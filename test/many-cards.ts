import { newCard } from '#engine/jobs/card.ts';
import type { JobCard } from '#engine/model/job-card.ts';

const NOW = Date.UTC(2026, 10, 23, 17);
const DAY = 86_400_000;

/** So many invented cards of ten coats each, the youngest last. */
export const manyCards = (count: number): readonly JobCard[] =>
  Array.from({ length: count }, (_, index) => ({
    ...newCard(
      { name: `Piece ${index}`, kind: 'furniture', base: 'chalk-paint', tone: 'dark', age: 'none' },
      `card-${index}`,
      NOW + index,
    ),
    coats: Array.from({ length: 10 }, (_unused, coat) => ({
      id: `c${coat}`,
      laidAt: NOW + coat * DAY,
      product: 'water-based-polyurethane',
      celsius: 21,
      relativeHumidity: 0.5,
    })),
  }));
