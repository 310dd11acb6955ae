/** The site with fewer pages of each kind, or with more knowledge: for the bench alone, so no page knows of it. */
import { resolve } from 'node:path';
import type { AstroInlineConfig } from 'astro';

type Vite = NonNullable<AstroInlineConfig['vite']>;
type Plugin = Extract<NonNullable<Vite['plugins']>[number], { readonly name: string }>;

const PATHS = 'export const getStaticPaths =';

/** Every page of which there is one, and one in so many of the others; `none` of those whose file matches. */
const oneIn = (step: number, none?: RegExp): Plugin => ({
  name: 'one-in-so-many',
  enforce: 'post',
  transform: (code, id) => {
    if (!id.includes('/site/pages/') || !code.includes(PATHS)) return undefined;
    const kept = none?.test(id) ? 'false' : `at % ${step} === 0`;
    return `${code.replace(PATHS, 'const allPaths =')}
export const getStaticPaths = async () => (await allPaths()).filter((_, at) => ${kept});`;
  },
});

/** All of the knowledge so many times over, unproven. Data files, which are made of all of it, are left empty. */
const grownBy = (times: number): Plugin => ({
  name: 'grown',
  enforce: 'pre',
  transform: (_code, id) =>
    id.endsWith('/site/build/knowledge.ts')
      ? `import { grownKnowledge } from ${JSON.stringify(resolve('test/bench/growth/known.ts'))};
export const knowledge = grownKnowledge(${times});`
      : /\/site\/pages\/(?!.*\[id\]).*\.json\.ts$/.test(id)
        ? `export const GET = () => new Response('{}');`
        : undefined,
});

/** Stops of the search for the flaw: what they cost is measured by itself. */
const SEE = /\/pages\/see\//;

export const fewerPages = (step: number, times?: number): Vite => ({
  plugins: times === undefined ? [oneIn(step)] : [grownBy(times), oneIn(step, SEE)],
});
