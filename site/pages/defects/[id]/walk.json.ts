import type { APIRoute } from 'astro';
import { dataAnswer } from '../../../build/data-answer.ts';
import { knowledge } from '../../../build/knowledge.ts';
import { walkDataFile } from '../../../shared/data-files.ts';
import { walkData } from '../../../shared/walk-data.ts';

export const getStaticPaths = () => knowledge.defects.map(({ id }) => ({ params: { id } }));

export const GET: APIRoute<Record<string, never>, { id: string }> = ({ params }) =>
  dataAnswer(walkDataFile(params.id), walkData(knowledge, params.id));
