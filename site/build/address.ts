/**
 * Where the site will stand, for what must be absolute: link previews, the feed, the sitemap, printed codes.
 * SITE=https://name.example/folder/ npm run build. Links between pages never need it; a folder moves them below it.
 */
const given = new URL(process.env['SITE'] ?? 'https://halfdry.example/');

/** The folder that the site stands in: it begins and ends with a slash. */
export const BASE = `${process.env['BASE'] ?? given.pathname}/`.replace(/^\/*/, '/').replace(/\/+$/, '/');

/** The whole address of a page that site/shared/urls.ts names. */
export const absolute = (path: string): string => new URL(BASE + path.replace(/^\//, ''), given.origin).href;

/** An address as a person reads it from paper: without what a browser adds by itself. */
export const spoken = (path: string): string =>
  absolute(path)
    .replace(/^https?:\/\//, '')
    .replace(/\/$/, '');
