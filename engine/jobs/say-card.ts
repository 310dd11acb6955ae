import type { Choices } from '../model/choices.ts';
import type { JobCard } from '../model/job-card.ts';

/** What lies below a top coat, in words. */
export type BaseWords = Choices['base']['values'];

/** What lies under the top coat, as the label of a drawing. */
export const sayBase = (words: BaseWords, { base, tone }: Pick<JobCard, 'base' | 'tone'>): string =>
  tone === 'wood' ? words[base] : `${words[base]}, ${tone}`;
