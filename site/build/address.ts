/**
 * Where the site will stand: SITE=https://name.example/folder/ npm run build. Links between pages need the folder
 * alone; the host is for what must be absolute: link previews, the feed, the sitemap, printed codes.
 */
const given = new URL(process.env['SITE'] ?? 'https://halfdry.example/');

/** The host of the site, without a slash at the end. */
export const { origin: ORIGIN } = given;

/** The folder of the host that the site stands in, with both slashes; pages know it as BASE of site/shared/urls.ts. */
export const FOLDER = `${process.env['BASE'] ?? given.pathname}/`.replace(/^\/*/, '/').replace(/\/+$/, '/');

/** The whole address of a path that begins at the root of the host, as site/shared/urls.ts spells them all. */
export const absolute = (path: string): string => new URL(path, ORIGIN).href;

/** An address as a person reads it from paper: without what a browser adds by itself. */
export const spoken = (path: string): string =>
  absolute(path)
    .replace(/^https?:\/\//, '')
    .replace(/\/$/, '');
