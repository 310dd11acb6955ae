import { type FindIndex, type Hit, pageName } from './document.ts';
import { pageAsked } from './page-asked.ts';

const plain = (text: string): string =>
  ` ${text
    .toLowerCase()
    .replace(/[^a-z]+/g, ' ')
    .trim()} `;

/** The word of the glossary, or the kind of can, that is named in a text, the longest of them, in the singular or with an s. */
export const wordAsked = (index: FindIndex, text: string): Hit | undefined => {
  const asked = plain(text);
  const [word] = index.documents
    .filter(
      ({ kind, title }) =>
        ['glossary', 'product'].includes(kind) &&
        [title, `${title}s`].some((name) => asked.includes(plain(name))),
    )
    .sort((one, other) => other.title.length - one.title.length);
  return word && pageAsked(index, text, pageName(word));
};
