import { createReadStream, globSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import type { ViteDevServer } from 'vite';
import type { FaultState } from './fault-watch.ts';
import { oneReload } from './one-reload.ts';

/** What a page of the preview is made of that its own module graph does not follow. */
const FOLLOWED = /\/(content|engine)\//;
const PREVIEW = new URL('../preview/', import.meta.url);

/** Pages for authors alone: they are in no build. */
const PAGES = [
  ['/preview', 'index.astro'],
  ['/preview/[id]', 'flaw.astro'],
  ['/preview/[id]/finds', 'finds.astro'],
] as const;

/**
 * After an edit of content what reads it is run anew, and with it all that rests on that; the engine and the pages' markup
 * are kept as they are, which is most of the work.
 */
const forget = (server: ViteDevServer, edited: string): void => {
  if (!edited.replaceAll('\\', '/').includes('/content/')) {
    server.moduleGraph.invalidateAll();
    return;
  }
  for (const { moduleGraph } of Object.values(server.environments))
    for (const module of moduleGraph.idToModuleMap.values())
      if (
        module.id?.startsWith('\0virtual:') ||
        (module.file?.includes('/site/') &&
          [...module.importedModules].some(({ file }) => file?.includes('/content/tools/')))
      )
        moduleGraph.invalidateModule(module);
};

type OnRequest = typeof import('../build/pictures/on-request.ts');

/**
 * In `npm run dev`, an edit below content/ or engine/ is read anew and the open page reloads; pictures of boards are drawn
 * when a page asks for them; faults of the content stand on every page until they are mended; each flaw has a page that
 * shows where it stands.
 */
export const liveContent = (): AstroIntegration => ({
  name: 'live-content',
  hooks: {
    'astro:config:setup': ({ command, injectRoute, injectScript }) => {
      if (command !== 'dev') return;
      for (const [pattern, file] of PAGES)
        injectRoute({ pattern, entrypoint: new URL(file, PREVIEW), prerender: false });
      injectScript('page', `import ${JSON.stringify(fileURLToPath(new URL('faults.ts', PREVIEW)))};`);
    },
    'astro:server:start': async ({ logger }) => {
      const { linkedKnowledge } = await import('../../content/tools/knowledge.ts');
      const { writeFrontMatterSchemas } = await import('../../content/tools/schemas.ts');
      const { known } = linkedKnowledge(process.cwd());
      if (!known) return;
      writeFrontMatterSchemas(known, process.cwd());
      logger.info('editors complete fields and ids of pages from .astro/collections');
    },
    'astro:server:setup': async ({ server, logger }) => {
      const { watchFaults } = await import('./fault-watch.ts');
      const reloads = oneReload(globSync(`${process.cwd()}/content/*/*.mdx`));
      server.ws.send = reloads.filtered(server.ws.send.bind(server.ws)) as typeof server.ws.send;
      const faults = watchFaults(process.cwd(), (state: FaultState) =>
        server.ws.send({ type: 'custom', event: 'halfdry:faults', data: state }),
      );
      server.httpServer?.on('close', faults.stop);
      faults.edited();
      server.watcher.on('all', (_event, path) => {
        if (!FOLLOWED.test(path.replaceAll('\\', '/'))) return;
        faults.edited();
        reloads.edited(path);
        forget(server, path);
        server.ws.send({ type: 'full-reload' });
      });
      server.middlewares.use((request, response, next) => {
        const { pathname } = new URL(request.url ?? '/', 'http://preview');
        if (pathname === '/preview/faults.json') {
          response.setHeader('Content-Type', 'application/json');
          return response.end(JSON.stringify(faults.state()));
        }
        if (/^\/preview\/[\w-]+\/finds\/?$/.test(pathname)) return void faults.checked().then(() => next());
        if (!pathname.endsWith('.webp')) return next();
        server
          .ssrLoadModule('/site/build/pictures/on-request.ts')
          .then((module) => (module as OnRequest).boardOnRequest(pathname))
          .then((file) => {
            if (!file) return next();
            response.setHeader('Content-Type', 'image/webp');
            createReadStream(file).pipe(response);
          })
          .catch((error: unknown) => {
            logger.error(error instanceof Error ? (error.stack ?? error.message) : String(error));
            next(error);
          });
      });
    },
  },
});
