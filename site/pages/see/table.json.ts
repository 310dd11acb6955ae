import { signMatrix } from '../../build/see.ts';

export const GET = () =>
  new Response(JSON.stringify(signMatrix), { headers: { 'Content-Type': 'application/json' } });
