import { createReadStream } from 'node:fs';
import type { AstroIntegration } from 'astro';

/** What a page of the preview is made of that its own module graph does not follow. */
const FOLLOWED = /\/(content|engine)\//;

/**
 * In `npm run dev`, an edit below content/ or engine/ is read anew and the open page reloads; pictures of boards are
 * drawn when a page asks for them.
 */
export const liveContent = (): AstroIntegration => ({
  name: 'live-content',
  hooks: {
    'astro:server:start': async ({ logger }) => {
      const { linkedKnowledge } = await import('../../content/tools/knowledge.ts');
      const { writeFrontMatterSchemas } = await import('../../content/tools/schemas.ts');
      const { known } = linkedKnowledge(process.cwd());
      if (!known) return;
      writeFrontMatterSchemas(known, process.cwd());
      logger.info('editors complete fields and ids of pages from .astro/collections');
    },
    'astro:server:setup': ({ server, logger }) => {
      server.watcher.on('all', (_event, path) => {
        if (!FOLLOWED.test(path.replaceAll('\\', '/'))) return;
        server.moduleGraph.invalidateAll();
        server.ws.send({ type: 'full-reload' });
      });
      server.middlewares.use((request, response, next) => {
        const path = new URL(request.url ?? '/', 'http://preview').pathname;
        if (!path.endsWith('.webp')) return next();
        server
          .ssrLoadModule('/site/build/pictures/on-request.ts')
          .then((module) => (module as typeof import('../build/pictures/on-request.ts')).boardOnRequest(path))
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
