import { getEntry, render } from 'astro:content';

type Folder = 'defects' | 'remedies' | 'terms' | 'lessons';

/** How long the text below an entry's front matter is. */
export const bodyLetters = async (folder: Folder, id: string): Promise<number> =>
  (await getEntry(folder, id))?.body?.trim().length ?? 0;

/** The text below an entry's front matter, ready to show; nothing where there is none. */
export const bodyOf = async (folder: Folder, id: string) => {
  const entry = await getEntry(folder, id);
  return entry?.body?.trim() ? (await render(entry)).Content : undefined;
};
