import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { FOLDERS } from '#engine/model/index.ts';

const pages = (folder: string) => glob({ base: `./content/${folder}`, pattern: '*.mdx' });

/** The kinds whose text below the front matter is shown. The front matter comes through build/knowledge.ts, checked. */
export const collections = {
  defects: defineCollection({ loader: pages(FOLDERS.defect) }),
  remedies: defineCollection({ loader: pages(FOLDERS.remedy) }),
  lessons: defineCollection({ loader: pages(FOLDERS.lesson) }),
  terms: defineCollection({ loader: pages(FOLDERS.term) }),
};
