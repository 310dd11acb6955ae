import type { Defect, Sign } from '../model/defect.ts';

/** What a flaw shows for a question, as far as its author says. */
export const signOf = ({ signs }: Pick<Defect, 'signs'>, question: string): Sign | undefined => {
  const byName: { readonly [question: string]: Sign | undefined } = signs;
  return byName[question];
};
