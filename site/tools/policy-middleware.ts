import type { MiddlewareHandler } from 'astro';
import { withPolicy } from './csp.ts';

/** Puts the policy into a page on its way to the file. */
export const onRequest: MiddlewareHandler = async ({ url }, next) => {
  const answer = await next();
  if (!answer.headers.get('content-type')?.startsWith('text/html')) return answer;
  return new Response(withPolicy(await answer.text(), url.pathname), answer);
};
