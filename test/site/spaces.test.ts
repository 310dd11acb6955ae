/** What is set side by side in a page runs on as one text: no space stands before a comma, a colon or a full stop. */
import { expect, it } from 'vitest';
import { builtPages, onePerShape } from './built.ts';

/** Tags that part no words. */
const IN_TEXT = /<\/?(?:a|abbr|b|em|i|q|small|span|strong|sub|sup|time|u|wbr)\b[^>]*>/g;
const UNREAD = /<(script|style|template|svg)\b.*?<\/\1>/gs;
/** A mark behind a space, within one run of words. */
const PARTED = /[^\n]{0,40}[^\s\0][ \n]+[,;:.](?=[\s\0])/g;

const partedIn = (html: string): readonly string[] => {
  const words = html
    .replaceAll(UNREAD, '\0')
    .replaceAll(IN_TEXT, '')
    .replaceAll(/<[^>]+>/g, '\0');
  return words.match(PARTED) ?? [];
};

it('finds a space before a comma, whatever tag stands between', () => {
  expect(partedIn('<h2> <span>4 steps</span>\n , when it is dry </h2>')).toHaveLength(1);
  expect(partedIn('<h2><span>4 steps</span>, when it is dry</h2>')).toEqual([]);
  expect(partedIn('<p>Dry</p> <p>, so</p>')).toEqual([]);
});

it('sets no mark apart from the word before it', () => {
  const repairs = builtPages().filter(({ address }) => address.startsWith('/remedies/'));
  expect(repairs.length).toBeGreaterThan(100);
  const pages = new Map([...repairs, ...onePerShape()].map((page) => [page.address, page]));
  const found = [...pages.values()].flatMap(({ address, html }) =>
    partedIn(html).map((words) => `${address}: ${words}`),
  );
  expect(found).toEqual([]);
});

it('leaves no room behind the label of a wait, where the clock writes its time', () => {
  const labels = builtPages().flatMap(({ html }) => html.match(/<b[^>]*data-until[^>]*>[^<]*<\/b>/g) ?? []);
  expect(labels.length).toBeGreaterThan(50);
  expect(labels.filter((label) => /\s<\/b>$/.test(label)).slice(0, 3)).toEqual([]);
});
