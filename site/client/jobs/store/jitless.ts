import { config } from 'zod';

/** The page's policy forbids code that is made at run time, so the schemas must not even try. Before any schema. */
config({ jitless: true });
