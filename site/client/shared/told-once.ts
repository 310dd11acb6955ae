/** Marks of the strip of the clock: the coat that it speaks of, and the one that the head of the page speaks of. */
type Mark = 'of' | 'head';

/** A coat that the head of the page speaks of has no strip over the foot, whichever of the two comes first. */
export const toldOnce = (mark: Mark, coat: string | undefined): void => {
  const strip = document.querySelector<HTMLElement>('hd-clock');
  if (!strip) return;
  if (coat === undefined) delete strip.dataset[mark];
  else strip.dataset[mark] = coat;
  const { of, head } = strip.dataset;
  strip.hidden = of !== undefined && of === head;
};
