/** What other programs read of the site: search engines, link previews, feed readers, the phone that installs it. */
import { existsSync, readFileSync } from 'node:fs';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { drawCard } from '../../site/build/pictures/cards.ts';
import { known } from '../content/real/knowledge.ts';
import { itAtLength } from '../thorough.ts';
import { builtPages } from './built.ts';

const SITE = 'https://halfdry.example';
const pages = builtPages();
const stays = pages.filter(({ html }) => !html.includes('http-equiv="refresh"'));
const pageAt = (address: string) => pages.find((page) => page.address === address)?.html ?? '';
const meta = (html: string, name: string) =>
  new RegExp(`<meta (?:property|name)="${name}" content="([^"]*)"`).exec(html)?.[1];

it('gives every page a title, a description and a preview whose picture is there', () => {
  const faults = stays.flatMap(({ address, html }) => {
    const image = meta(html, 'og:image') ?? '';
    return [
      /<title>[^<]{4,}<\/title>/.test(html) ? '' : 'no title',
      (meta(html, 'description') ?? '').length >= 20 ? '' : 'no description',
      meta(html, 'og:title') ? '' : 'no preview title',
      existsSync(`dist${image.slice(SITE.length)}`) && image.startsWith(SITE) ? '' : `no picture ${image}`,
    ].flatMap((fault) => (fault ? `${address}: ${fault}` : []));
  });
  expect(faults).toEqual([]);
});

it('names one address to keep for every page but the one for what is not there', () => {
  const faults = pages
    .filter(({ address }) => address !== '/404.html')
    .filter(
      ({ html }) =>
        [...html.matchAll(/<link rel="canonical" href="https:\/\/halfdry\.example\/[^"]*"/g)].length !== 1,
    )
    .filter(({ html }) => !html.includes('name="robots" content="noindex"'));
  expect(faults.map(({ address }) => address)).toEqual([]);
});

describe('structured data', () => {
  const dataOf = (address: string) =>
    JSON.parse(
      /<script type="application\/ld\+json">([\s\S]*?)<\/script>/.exec(pageAt(address))?.[1] ?? 'null',
    );

  it.each(known.remedies.map(({ id, name }) => [id, name] as const))('%s: where it stands', (id, name) => {
    const [article, crumbs] = dataOf(`/remedies/${id}/`);
    expect(article).toMatchObject({
      '@context': 'https://schema.org',
      '@type': 'TechArticle',
      headline: name,
    });
    const items = crumbs.itemListElement as { position: number; item: string }[];
    expect(items.map(({ position }) => position)).toEqual([1, 2, 3]);
    for (const { item } of items) expect(pageAt(item.slice(SITE.length))).not.toBe('');
  });

  it('hands on no steps without their stops', () => {
    expect(pages.filter(({ html }) => /"HowTo(?:Step)?"/.test(html))).toEqual([]);
  });

  it('calls a flaw an article, and asks nothing in the name of a reader', () => {
    for (const { id, name } of known.defects) {
      const [article] = dataOf(`/defects/${id}/`);
      expect(article).toMatchObject({ '@type': 'TechArticle', headline: name });
    }
    expect(pages.filter(({ html }) => /"(FAQPage|QAPage)"/.test(html))).toEqual([]);
  });
});

it('lists each flaw and repair in the sitemap, and only pages that are there', () => {
  const urls = [...readFileSync('dist/sitemap.xml', 'utf8').matchAll(/<loc>([^<]*)<\/loc>/g)].map(
    ([, url = '']) => url,
  );
  for (const { id } of known.defects) expect(urls).toContain(`${SITE}/defects/${id}/`);
  for (const { id } of known.remedies) expect(urls).toContain(`${SITE}/remedies/${id}/`);
  expect(urls).toContain(`${SITE}/`);
  expect(new Set(urls).size).toBe(urls.length);
  const there = new Set(pages.map(({ address }) => SITE + address));
  expect(urls.filter((url) => !there.has(url))).toEqual([]);
  expect(readFileSync('dist/robots.txt', 'utf8')).toContain(`Sitemap: ${SITE}/sitemap.xml`);
});

it('tells of changes in a feed, each entry once and newest first', () => {
  const feed = readFileSync('dist/feed.xml', 'utf8');
  const ids = [...feed.matchAll(/<entry><id>([^<]*)<\/id>/g)].map(([, id]) => id);
  const dates = [...feed.matchAll(/<updated>([^<]*)<\/updated><summary>/g)].map(([, date = '']) => date);
  expect(ids.length).toBeGreaterThan(0);
  expect(new Set(ids).size).toBe(ids.length);
  expect(dates).toEqual([...dates].sort().reverse());
  expect(feed).not.toMatch(/&(?!#\d+;)/);
});

it('can be put on the home screen: icons of the sizes that they claim, addresses relative', async () => {
  const manifest = JSON.parse(readFileSync('dist/manifest.webmanifest', 'utf8'));
  expect([manifest.start_url, manifest.scope]).toEqual(['./', './']);
  for (const { src, sizes } of manifest.icons as { src: string; sizes: string }[]) {
    const { width, height } = await sharp(`dist/${src}`).metadata();
    expect(`${width}x${height}`).toBe(sizes);
  }
});

describe('card images', () => {
  it('are 1200 × 630, for every flaw and repair', async () => {
    const files = [
      'halfdry.jpg',
      ...known.defects.map(({ id }) => `defects/${id}.jpg`),
      ...known.remedies.map(({ id }) => `remedies/${id}.jpg`),
      ...known.lessons.map(({ id }) => `lessons/${id}.jpg`),
    ];
    for (const file of files) {
      const { width, height, format } = await sharp(`dist/cards/${file}`).metadata();
      expect([file, width, height, format]).toEqual([file, 1200, 630, 'jpeg']);
    }
  });

  itAtLength('come out the same twice', async () => {
    const board = known.defects.flatMap(({ boards }) => boards)[0];
    const card = {
      file: 'x.jpg',
      kind: 'The repair',
      title: 'Sand and recoat',
      address: 'halfdry.example/r/x',
    };
    const draw = () => drawCard(board ? { ...card, board } : card);
    expect((await draw()).equals(await draw())).toBe(true);
  });
});

it('prints a code on every repair, and on no screen', () => {
  for (const { id } of known.remedies) {
    const html = pageAt(`/remedies/${id}/`);
    expect(html).toMatch(/<figure class="qr"[^>]*>\s*<svg [\s\S]*?<path d="M\d+ \d+h/);
    expect(html).toMatch(/\.qr[^{]*\{display:none\}/);
  }
});
