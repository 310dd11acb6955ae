import type { Knowledge } from '../knowledge.ts';
import type { FindDocument } from './document.ts';

/** The words of an evidence name: `film/lap-marks` is `lap marks`. */
const spoken = (covered: string): string => covered.replace(/^.*\//, '').replaceAll('-', ' ');

/** All that can be searched for. A flaw is also found by the standard's term and by the names of the flaws it covers. */
export const documentsOf = (known: Knowledge): FindDocument[] => [
  ...known.defects.map(
    (defect): FindDocument => ({
      id: defect.id,
      kind: 'defect',
      title: defect.name,
      also: [...defect.also, ...defect.standard.map(({ term }) => term), ...defect.covers.map(spoken)],
      signs: [defect.looks, defect.shows],
      text: [defect.summary, ...defect.prevent].join(' '),
    }),
  ),
  ...known.questions.map(
    (question): FindDocument => ({
      id: question.id,
      kind: 'question',
      title: question.ask,
      also: [],
      signs: [question.yes],
      text: question.how,
    }),
  ),
  ...known.remedies.map(
    (remedy): FindDocument => ({
      id: remedy.id,
      kind: 'remedy',
      title: remedy.name,
      also: [],
      signs: [],
      text: remedy.summary,
    }),
  ),
  ...known.lessons.map(
    (lesson): FindDocument => ({
      id: lesson.id,
      kind: 'lesson',
      title: lesson.title,
      also: [],
      signs: [],
      text: lesson.summary,
    }),
  ),
  ...known.terms.map(
    (term): FindDocument => ({
      id: term.id,
      kind: 'glossary',
      title: term.term,
      also: term.also,
      signs: [],
      text: term.means,
    }),
  ),
];
