/** A card as version 3 was written: that a repair laid no coat stood in its note. Frozen. Invented. */
export const CARD_3 = {
  version: 3,
  id: 'old-3',
  madeAt: 1_795_000_000_000,
  changedAt: 1_795_700_000_000,
  name: 'Walnut desk',
  kind: 'tabletop',
  base: 'stain',
  tone: 'dark',
  age: 'none',
  coats: [
    {
      id: 'c1',
      laidAt: 1_795_000_050_000,
      product: 'water-based-polyurethane',
      celsius: 21,
      relativeHumidity: 0.5,
    },
  ],
  flaws: [{ id: 'f1', foundAt: 1_795_100_000_000, defect: 'bubbles', coat: 'c1', answers: [] }],
  repairs: [
    {
      id: 'r1',
      doneAt: 1_795_200_000_000,
      remedy: 'full-panel-recoat',
      flaw: 'f1',
      changedAt: 1_795_300_000_000,
      note: 'Look at it again after a week.\nNo coat was laid.',
    },
    { id: 'r2', doneAt: 1_795_400_000_000, remedy: 'full-panel-recoat', note: 'No coat was laid.' },
    { id: 'r3', doneAt: 1_795_500_000_000, remedy: 'full-panel-recoat', note: 'Sunday. No coat was laid.' },
    { id: 'r4', doneAt: 1_795_600_000_000, remedy: 'full-panel-recoat', note: 'No coat was laid. Really?' },
    { id: 'r5', doneAt: 1_795_650_000_000, remedy: 'full-panel-recoat' },
  ],
  photos: [],
  notes: 'No coat was laid.',
};
