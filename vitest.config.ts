import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';
import { contentModules } from './site/tools/content-modules.ts';

/** Minutes long or in need of a quiet machine, so they stand apart: two whole builds, spoiled copies of the content, … */
const SLOW = [
  'test/mutation/**/*.test.ts',
  'test/find/latency.test.ts',
  ...[
    'bytes',
    'folder',
    'jobs-hard',
    'jobs-thread',
    'killed-browser',
    'light',
    'offline-update',
    'pictures',
    'practice-draw',
    'quiet',
    'soak',
    'storage-files',
    'storage-full',
    'storage-killed',
    'storage-list',
    'walks',
    'zoom',
  ].map((name) => `test/site/${name}.test.ts`),
];
/** These look at one of each kind, or at fewer at random, in `npm test`, and at everything in `npm run test:slow`. */
const THOROUGH = [
  ...[
    'access',
    'case',
    'clock',
    'hostile',
    'jobs',
    'jobs-paper',
    'layout',
    'lost',
    'meta',
    'offline',
    'practice',
    'schedule',
    'search',
    'storage',
    'tell',
    'told',
    'told-stops',
    'told-steps',
    'print-sheets',
    'print',
  ].map((name) => `site/${name}`),
  'engine/schedule/both-faces',
  'engine/schedule/properties',
  'bench/growth',
  'cases/orders',
  'client/answers-alike',
  'client/jobs-copies-any-row',
  'client/jobs-form',
  'client/jobs-two-tabs',
  'content/guide',
  'content/real/cautions-told',
  'content/real/hazards-beyond-repairs',
  'content/told-by-the-check',
  'engine/board/features',
  'engine/board/laws',
  'engine/calc/never-early.properties',
  'engine/clock/doubts',
  'engine/compiled/compiled',
  'engine/fitness/agreement',
  'engine/hear/beside',
  'engine/hear/strangers',
  'engine/hear/whole-words',
  'engine/hear/words/blanks',
  'engine/jobs/facts',
  'engine/jobs/merge',
  'engine/practice/items',
  'engine/see/see',
  'engine/steps/resolve.real',
  'site-tools/board',
  'tools/find',
  'tools/interview',
  'tools/new-and-check',
  'words/harm-told',
  'words/kept',
  'words/named',
].map((name) => `test/${name}.test.ts`);
/** The longest first, so that no core waits at the end for one that began last. */
const LONG = [
  'content/told-by-the-check',
  'board/features',
  'board/kept-boards',
  'content/coats-on-coats',
  'calc/never-early',
  'tools/walk',
  'tools/new-and-check',
  'schedule/properties',
  ...[
    'print-sheets',
    'tell',
    'clock',
    'jobs',
    'print',
    'way',
    'practice',
    'schedule',
    'layout',
    'access',
  ].map((name) => `site/${name}.`),
];
class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]) {
    const place = ({ moduleId }: TestSpecification) => {
      const at = LONG.findIndex((name) => moduleId.includes(name));
      return at < 0 ? LONG.length : at;
    };
    return (await super.sort(files)).sort((one, two) => place(one) - place(two));
  }
}
const SITE_SETUP = {
  // A page on a busy machine takes longer than the second that is usual.
  expect: { poll: { timeout: 10_000 } },
  globalSetup: './test/site/setup.ts',
  setupFiles: ['./test/seed.ts', './test/site/built-first.ts'],
};

export default defineConfig({
  test: {
    sequence: { sequencer: LongestFirst },
    projects: [
      {
        plugins: [contentModules()],
        test: {
          name: 'unit',
          // Pure functions share nothing, so a file need not read the content again.
          isolate: false,
          maxWorkers: 2,
          include: ['test/**/*.test.ts'],
          exclude: ['test/site/**', ...SLOW],
          setupFiles: './test/seed.ts',
          testTimeout: 60_000,
          sequence: { groupOrder: 0 },
        },
      },
      {
        test: {
          name: 'types',
          include: [],
          typecheck: {
            enabled: true,
            only: true,
            include: ['test/**/*.test-d.ts'],
            tsconfig: 'test/types.tsconfig.json',
          },
        },
      },
      {
        test: {
          name: 'site',
          include: ['test/site/**/*.test.ts'],
          exclude: SLOW,
          ...SITE_SETUP,
          testTimeout: 300_000,
          hookTimeout: 240_000,
          // The files of a worker share its browser; two keep two cores busy.
          isolate: false,
          maxWorkers: 2,
          sequence: { groupOrder: 1 },
        },
      },
      {
        test: {
          name: 'slow',
          include: [...SLOW, ...THOROUGH],
          ...SITE_SETUP,
          env: { THOROUGH: '1' },
          testTimeout: 600_000,
          hookTimeout: 240_000,
          maxWorkers: 2,
          sequence: { groupOrder: 2 },
        },
      },
    ],
  },
});
