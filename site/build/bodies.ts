import { getEntry, render } from 'astro:content';

/** The text below an entry's front matter, ready to show; nothing where there is none. */
export const bodyOf = async (folder: 'defects' | 'remedies' | 'terms' | 'lessons', id: string) => {
  const entry = await getEntry(folder, id);
  return entry?.body?.trim() ? (await render(entry)).Content : undefined;
};
