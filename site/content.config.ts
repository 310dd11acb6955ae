import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { FOLDERS, SCHEMAS } from '#engine/model/index.ts';

const pages = (folder: string) => glob({ base: `./content/${folder}`, pattern: '*.mdx' });

/** The kinds whose text below the front matter is shown. All else comes through build/knowledge.ts. */
export const collections = {
  defects: defineCollection({ loader: pages(FOLDERS.defect), schema: SCHEMAS.defect }),
  remedies: defineCollection({ loader: pages(FOLDERS.remedy), schema: SCHEMAS.remedy }),
  lessons: defineCollection({ loader: pages(FOLDERS.lesson), schema: SCHEMAS.lesson }),
  terms: defineCollection({ loader: pages(FOLDERS.term), schema: SCHEMAS.term }),
};
