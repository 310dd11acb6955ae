/** A card as version 2 took it: a cure of a thousand million days on the can. Frozen. Invented. */
export const CARD_2 = {
  version: 2,
  id: 'old-2',
  madeAt: 1_795_000_000_000,
  changedAt: 1_795_000_100_000,
  name: 'Pine shelf',
  kind: 'furniture',
  base: 'bare-wood',
  tone: 'wood',
  age: 'none',
  label: { minutes: { recoat: { from: 120, to: 240 }, cure: { from: 1.44e12, to: 1.44e12 } } },
  coats: [
    {
      id: 'c1',
      laidAt: 1_795_000_050_000,
      product: 'drying-oil',
      celsius: 21,
      relativeHumidity: 0.5,
      label: { minutes: { touch: { from: 0.001, to: 600 }, recoat: { from: 1440, to: 4320 } } },
    },
  ],
  flaws: [],
  repairs: [],
  photos: [],
  notes: 'two shelves',
};
