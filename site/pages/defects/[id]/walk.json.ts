import type { APIRoute } from 'astro';
import { knowledge } from '../../../build/knowledge.ts';
import { walkData } from '../../../shared/walk-data.ts';

export const getStaticPaths = () => knowledge.defects.map(({ id }) => ({ params: { id } }));

export const GET: APIRoute<Record<string, never>, { id: string }> = ({ params }) =>
  Response.json(walkData(knowledge, params.id));
