/** Random cases are the same in every run, so that a red test is red again. `SEED=7 npm test` draws others. */
import fc from 'fast-check';

fc.configureGlobal({ seed: Number(process.env['SEED'] ?? 2026) });
