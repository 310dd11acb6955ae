/** A host that can be changed, slowed to a stop half way, and taken off the network. */
import { cpSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { siteHandler } from '../../site/tools/site-handler.ts';

export type Host = {
  readonly base: string;
  /** Requests that were answered, so far. */
  readonly answered: () => number;
  /** Serves another folder from now on, below `path`. */
  readonly serve: (folder: string, path?: string) => void;
  /** Answers so many more packs and then nothing at all. */
  readonly cutAfter: (packs: number) => void;
  readonly close: () => void;
};

export const startHost = async (folder: string, path = '/'): Promise<Host> => {
  let handle = siteHandler(folder);
  let below = path;
  let packs = Number.POSITIVE_INFINITY;
  let answered = 0;
  const server = createServer((request, response) => {
    const url = request.url ?? '/';
    if (url.includes('/offline/')) packs -= 1;
    if (packs < 0 || (packs === 0 && !url.includes('/offline/'))) {
      response.destroy();
      return;
    }
    answered += 1;
    if (!url.startsWith(below)) {
      response.writeHead(404).end();
      return;
    }
    request.url = `/${url.slice(below.length)}`;
    handle(request, response);
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  return {
    base: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    answered: () => answered,
    serve: (other, elsewhere = '/') => {
      handle = siteHandler(other);
      below = elsewhere;
      packs = Number.POSITIVE_INFINITY;
    },
    cutAfter: (count) => {
      packs = count;
      if (!count) server.closeAllConnections();
    },
    close: () => {
      server.closeAllConnections();
      server.close();
    },
  };
};

/** The flaws of the small copies. */
const FEW = ['lap-marks', 'bubbles', 'cloudy-film'];

/** A copy of dist/, whole or with few flaws and the first questions of the search alone. */
export const copyOfSite = (size: 'whole' | 'few'): { dist: string; remove: () => void } => {
  const folder = mkdtempSync(join(tmpdir(), 'site-'));
  const dist = join(folder, 'dist');
  mkdirSync(dist);
  cpSync('dist', dist, {
    recursive: true,
    filter: (source) => {
      const [top, second, third] = source.replaceAll('\\', '/').split('/').slice(1);
      if (top === 'cards') return false;
      if (size === 'whole') return true;
      if (top === 'defects' && second && second !== 'index.html') return FEW.includes(second);
      return !(top === 'see' && third && third !== 'index.html');
    },
  });
  return { dist, remove: () => rmSync(folder, { recursive: true, force: true }) };
};
