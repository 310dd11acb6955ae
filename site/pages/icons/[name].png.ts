import type { APIRoute } from 'astro';
import { drawIcon, ICONS } from '../../build/icon.ts';

type Name = keyof typeof ICONS;

export const getStaticPaths = () => Object.keys(ICONS).map((name) => ({ params: { name } }));

export const GET: APIRoute = async ({ params }) =>
  new Response(new Uint8Array(await drawIcon(params['name'] as Name)));
