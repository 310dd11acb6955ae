/** A card as version 1 of it was written. Frozen: it had no removals, no times of correction, no nights. Invented. */
export const CARD_1 = {
  version: 1,
  id: 'old-1',
  madeAt: 1_795_000_000_000,
  changedAt: 1_795_000_100_000,
  name: 'Oak table',
  kind: 'tabletop',
  base: 'stain',
  tone: 'wood',
  age: 'none',
  coats: [
    {
      id: 'c1',
      laidAt: 1_795_000_050_000,
      product: 'water-based-polyurethane',
      celsius: 21,
      relativeHumidity: 0.5,
      applicator: 'brush',
    },
  ],
  flaws: [{ id: 'f1', foundAt: 1_795_000_060_000, defect: 'bubbles', coat: 'c1', answers: [] }],
  repairs: [],
  photos: [{ id: 'p1', takenAt: 1_795_000_060_000, width: 4, height: 3 }],
  notes: 'by the window',
};
