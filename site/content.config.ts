import { defineCollection } from 'astro:content';
import { glob, type Loader } from 'astro/loaders';
import { FOLDERS } from '#engine/model/index.ts';

/**
 * Pages without their front matter, which comes through build/knowledge.ts, checked. The framework writes all that it
 * holds anew at each save in the preview, and that took longer than the page itself.
 */
const pages = (folder: string): Loader => {
  const { load, ...loader } = glob({ base: `./content/${folder}`, pattern: '*.mdx' });
  const parseData = async <T extends Record<string, unknown>>(_: { data: T }): Promise<T> =>
    Object.create(null);
  return { ...loader, load: (context) => load({ ...context, parseData }) };
};

/** The kinds whose text below the front matter is shown. */
export const collections = {
  defects: defineCollection({ loader: pages(FOLDERS.defect) }),
  remedies: defineCollection({ loader: pages(FOLDERS.remedy) }),
  lessons: defineCollection({ loader: pages(FOLDERS.lesson) }),
  terms: defineCollection({ loader: pages(FOLDERS.term) }),
};
