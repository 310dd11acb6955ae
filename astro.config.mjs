// @ts-check
import mdx from '@astrojs/mdx';
import { defineConfig } from 'astro/config';
import { FOLDER, ORIGIN } from './site/build/address.ts';
import { contentModules } from './site/tools/content-modules.ts';
import { csp } from './site/tools/csp.ts';
import { liveContent } from './site/tools/live-content.ts';

// The framework would let a variable of this name in the shell win over `base` on the pages.
delete process.env['BASE_URL'];

export default defineConfig({
  site: ORIGIN,
  base: FOLDER,
  srcDir: './site',
  publicDir: './site/public',
  outDir: './dist',
  trailingSlash: 'always',
  // `true` keeps the spaces between inline elements; Astro's newer default drops them.
  compressHTML: true,
  build: { format: 'directory', inlineStylesheets: 'always', concurrency: 4 },
  devToolbar: { enabled: false },
  integrations: [mdx(), liveContent(), csp()],
  vite: {
    plugins: [contentModules()],
    build: { rolldownOptions: { checks: { moduleLevelDirective: false } } },
    // Each page names its scripts: a name of the framework's making is as long as three lines of text.
    environments: {
      client: { build: { rolldownOptions: { output: { entryFileNames: '_astro/[hash].js' } } } },
    },
  },
});
