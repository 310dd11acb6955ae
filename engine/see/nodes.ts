import { ANSWERS, type Answer } from '../case/case.ts';
import { isOneOf } from '../plain/entry-of.ts';
import type { SignMatrix } from './matrix.ts';
import { type Sighting, see } from './see.ts';

/** One stop of the search for the defect, at an address made of what was seen. */
export type SeeNode = {
  readonly address: readonly string[];
  readonly seen: readonly (readonly [string, Answer])[];
  readonly sighting: Sighting;
  /** Whether can't tell leads on from here, or only to the list of what is left. */
  readonly mayDoubt: boolean;
};

/** How often a way through the written-out pages may answer can't tell; script plans any number anew. */
const DOUBTS = 1;

export const seeAddress = (seen: Iterable<readonly [string, Answer]>): string[] =>
  [...seen].map(([question, answer]) => `${question}-${answer}`);

/** Every stop that is written out as a page: all yes/no ways, and those with one can't tell, planned anew after it. */
export function* seeNodes(matrix: SignMatrix): Generator<SeeNode> {
  yield* below(matrix, []);
}

function* below(matrix: SignMatrix, seen: readonly (readonly [string, Answer])[]): Generator<SeeNode> {
  const sighting = see(matrix, new Map(seen));
  const mayDoubt = seen.filter(([, answer]) => answer === 'unsure').length < DOUBTS;
  yield { address: seeAddress(seen), seen, sighting, mayDoubt };
  const { question } = sighting;
  if (question === undefined) return;
  const answers: readonly Answer[] = mayDoubt ? ANSWERS : ['yes', 'no'];
  for (const answer of answers) {
    const next = [...seen, [question, answer] as const];
    // A sign that all that are left share is never asked, so both answers keep at least one defect.
    yield* below(matrix, next);
  }
}

/** What an address of the search says, unknown questions dropped. */
export const readSeeAddress = (matrix: SignMatrix, segments: readonly string[]): Map<string, Answer> => {
  const seen = new Map<string, Answer>();
  for (const segment of segments) {
    const [, question, answer] = /^(.+)-([a-z]+)$/.exec(segment) ?? [];
    if (question && matrix.questions.includes(question) && isOneOf(ANSWERS, answer))
      seen.set(question, answer);
  }
  return seen;
};

/** The address of the written-out page that goes on from what was seen, as far as the plan asks for it. */
export const nearestSeeAddress = (matrix: SignMatrix, seen: ReadonlyMap<string, Answer>): string[] => {
  const way = new Map<string, Answer>();
  for (;;) {
    const { question } = see(matrix, way);
    const answer = question === undefined ? undefined : seen.get(question);
    const doubts = [...way.values()].filter((one) => one === 'unsure').length;
    if (question === undefined || !answer || (answer === 'unsure' && doubts >= DOUBTS))
      return seeAddress(way);
    way.set(question, answer);
  }
};
