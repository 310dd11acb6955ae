import type { JobCard } from '../model/job-card.ts';

const BASES: Readonly<Record<JobCard['base'], string>> = {
  'chalk-paint': 'Chalk-type paint',
  'milk-paint': 'Milk paint',
  'latex-paint': 'Latex paint',
  'oil-paint': 'Oil paint',
  stain: 'Stained wood',
  'bare-wood': 'Bare wood',
  'old-finish': 'Old finish',
  wax: 'Wax',
  laminate: 'Laminate',
};

/** What lies under the top coat, as the label of a drawing. */
export const sayBase = ({ base, tone }: Pick<JobCard, 'base' | 'tone'>): string =>
  tone === 'wood' ? BASES[base] : `${BASES[base]}, ${tone}`;
