import { existsSync, readFileSync } from 'node:fs';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { join } from 'node:path';
import sirv from 'sirv';
import { cacheControl, HEADERS } from './headers.ts';

const pathOf = (request: IncomingMessage): string => {
  try {
    return decodeURIComponent(new URL(request.url ?? '/', 'http://site').pathname);
  } catch {
    return '/';
  }
};

/** Answers as a static host would: files, a redirect to the slash, and the page for what is not there. */
export const siteHandler = (folder: string) => {
  const files = sirv(folder, {
    extensions: ['html'],
    setHeaders: (response, path) => {
      response.setHeader('Cache-Control', cacheControl(path));
      for (const [name, value] of Object.entries(HEADERS)) response.setHeader(name, value);
    },
  });
  return (request: IncomingMessage, response: ServerResponse): void => {
    const path = pathOf(request);
    const folded = path.split('/').includes('..') ? undefined : join(folder, path, 'index.html');
    if (!path.endsWith('/') && folded && existsSync(folded)) {
      const { search } = new URL(request.url ?? '/', 'http://site');
      response.writeHead(308, { Location: `${encodeURI(path)}/${search}` }).end();
      return;
    }
    files(request, response, () => {
      response.writeHead(404, { 'Content-Type': 'text/html; charset=utf-8', ...HEADERS });
      response.end(readFileSync(join(folder, '404.html')));
    });
  };
};
