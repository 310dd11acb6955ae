import { planData } from '../../build/plan.ts';

export const GET = () =>
  new Response(JSON.stringify(planData()), { headers: { 'Content-Type': 'application/json' } });
