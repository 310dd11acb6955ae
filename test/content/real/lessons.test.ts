/** The lessons as they are written: easy to read, short, with boards that can be dealt, and linked both ways. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { gradeOf, HIGHEST_GRADE } from '../../../content/tools/grade.ts';
import { readPractice } from '../../../content/tools/practice.ts';
import { dealPractice } from '../../../engine/practice.ts';
import { known } from './knowledge.ts';

const words = readPractice(known, process.cwd());

/** Slow readers of plain text; adults read 238 words a minute (Brysbaert, Journal of Memory and Language, 2019, from memory). */
const WORDS_A_MINUTE = 200;
const LONGEST_MINUTES = 5;

const lessons = known.lessons.map((lesson) => {
  const body = readFileSync(lesson.file, 'utf8').split(/^---$/m).slice(2).join('').trim();
  const parts = [
    lesson.title,
    lesson.summary,
    ...lesson.needs,
    ...lesson.practice,
    ...lesson.see,
    ...lesson.boards.map(({ say }) => say),
    body,
  ];
  return { lesson, body, text: parts.map((part) => (/[.!?]$/.test(part) ? part : `${part}.`)).join('\n') };
});

describe('lessons', () => {
  it('are sixteen at least, each in a place of its own', () => {
    expect(lessons.length).toBeGreaterThanOrEqual(16);
    expect(new Set(lessons.map(({ lesson }) => lesson.place)).size).toBe(lessons.length);
  });

  it('read no harder than grade 7, text and lists together', () => {
    const hard = lessons.flatMap(({ lesson, text }) => {
      const grade = gradeOf(text);
      return grade > HIGHEST_GRADE ? [`${lesson.id}: ${grade.toFixed(1)}`] : [];
    });
    expect(hard).toEqual([]);
  });

  it('are read in under five minutes', () => {
    const long = lessons.flatMap(({ lesson, text }) => {
      const count = text.split(/\s+/).length;
      return count >= WORDS_A_MINUTE * LONGEST_MINUTES ? [`${lesson.id}: ${count} words`] : [];
    });
    expect(long).toEqual([]);
  });

  it('have five boards of their own that can be dealt, no two alike', () => {
    for (const { lesson } of lessons) {
      const items = lesson.items.map((key) => dealPractice(known, words, key));
      expect(new Set(items.map(({ board }) => JSON.stringify(board))).size, lesson.id).toBe(items.length);
      expect(items.length, lesson.id).toBeGreaterThanOrEqual(5);
    }
  });

  it('show boards that are there, or say why they show none', () => {
    for (const { lesson } of lessons) {
      expect(lesson.boards.length > 0 || lesson.boardless !== undefined, lesson.id).toBe(true);
      for (const { defect, board } of lesson.boards)
        expect(
          known.get('defect', defect).boards[board - 1],
          `${lesson.id}: ${defect} ${board}`,
        ).toBeDefined();
    }
  });

  it('lead to flaws and repairs', () => {
    for (const { lesson } of lessons) {
      expect(lesson.defects.length, lesson.id).toBeGreaterThan(0);
      expect(lesson.remedies.length, lesson.id).toBeGreaterThan(0);
    }
  });
});
