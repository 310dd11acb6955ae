import { planData } from '../../lib/plan.ts';

export const GET = () =>
  new Response(JSON.stringify(planData()), { headers: { 'Content-Type': 'application/json' } });
