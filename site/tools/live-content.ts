import type { AstroIntegration } from 'astro';

/** In `npm run dev`, an edit below content/ is read anew and the open page reloads. */
export const liveContent = (): AstroIntegration => ({
  name: 'live-content',
  hooks: {
    'astro:server:setup': ({ server }) => {
      server.watcher.on('all', (_event, path) => {
        if (!path.replaceAll('\\', '/').includes('/content/')) return;
        server.moduleGraph.invalidateAll();
        server.ws.send({ type: 'full-reload' });
      });
    },
  },
});
