import { jobsData } from '../../build/jobs.ts';

export const GET = () =>
  new Response(JSON.stringify(jobsData()), { headers: { 'Content-Type': 'application/json' } });
