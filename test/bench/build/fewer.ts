/** The site with fewer pages of each kind: for the bench alone, so no page knows of it. */
import type { AstroInlineConfig } from 'astro';

const PATHS = 'export const getStaticPaths =';

/** A build of every page of which there is one, and of one in so many of the others. */
export const oneIn = (step: number): NonNullable<AstroInlineConfig['vite']> => ({
  plugins: [
    {
      name: 'one-in-so-many',
      enforce: 'post',
      transform: (code: string, id: string) =>
        step > 1 && id.includes('/site/pages/') && code.includes(PATHS)
          ? `${code.replace(PATHS, 'const allPaths =')}
export const getStaticPaths = async () => (await allPaths()).filter((_, at) => at % ${step} === 0);`
          : undefined,
    },
  ],
});
