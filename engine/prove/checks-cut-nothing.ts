import type { Issue } from '../faults/issue.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import { orderedIn } from './hazard-words.ts';

/** What breaks into a film, by hand or with an edge. */
const CUTS =
  /\b(sand|scrape|shave|slice|scuff|chip) (a|an|any|it|off|on|one|some|the|this)\b|\bcut (it|six|through)\b|\bpush a \w+ under\b/i;
/** That says what to do where the layers may be old. */
const OF_OLD_LAYERS = /\bunknown age\b/i;

/** A question is asked before anything is known and shown alone: its check breaks into no film that may hold lead. */
export function* checksCutNothing(known: Knowledge): Generator<Issue> {
  for (const question of known.questions)
    for (const field of ['how', 'sure', 'on-the-piece'] as const) {
      const text = question[field] ?? '';
      const word = orderedIn(text).match(CUTS)?.[0];
      if (word && !OF_OLD_LAYERS.test(text))
        yield { file: question.file, line: question.lineOf([field]), code: 'check-cuts', text, word };
    }
}
