/** What `npm test` samples is tried whole by `npm run test:slow`: every file that samples is named there, and is there. */
import { globSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import config from '../vitest.config.ts';

const slow = (config.test?.projects ?? []).flatMap((project) =>
  typeof project === 'object' && 'test' in project && project.test?.name === 'slow'
    ? (project.test.include ?? [])
    : [],
);

it('samples in no file that is never tried whole', () => {
  const samples = globSync('test/**/*.test.ts').filter((file) =>
    /from '(?:\.\.?\/)+thorough\.ts'/.test(readFileSync(file, 'utf8')),
  );
  expect(samples.length).toBeGreaterThan(20);
  const whole = new Set(slow.flatMap((pattern) => globSync(pattern)));
  expect(samples.filter((file) => !whole.has(file))).toEqual([]);
});

it('names no file that is gone', () => {
  expect(slow.length).toBeGreaterThan(20);
  expect(slow.filter((pattern) => globSync(pattern).length === 0)).toEqual([]);
});
