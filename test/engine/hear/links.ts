import type { Links } from '#engine/hear.ts';

/** Addresses that tell what they lead to, and what they carry. */
export const links: Links = {
  defect: (defect, stage) => `/d/${defect}/${stage ?? ''}`,
  rule: (rule) => `/safety/${rule}/`,
  page: (kind, id, carried) => `/${kind}/${id}/${new URLSearchParams(carried)}`,
  which: (carried) => `/which-coat/${new URLSearchParams(carried)}`,
  tell: '/tell/',
};
