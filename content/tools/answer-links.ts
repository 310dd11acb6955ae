import type { Carried, Links } from '#engine/hear.ts';

/** Where pages of each kind stand on a site of its own. */
const ROOMS: Readonly<Record<string, string>> = {
  defect: '/defects',
  remedy: '/remedies',
  rule: '/safety',
  lesson: '/learn',
  page: '',
};

const carrying = (url: string, carried: Carried): string =>
  Object.keys(carried).length ? `${url}#${new URLSearchParams(carried)}` : url;

const pageAt = (kind: string, id: string): string | undefined => {
  if (kind === 'product') return '/first-coat/#can';
  if (kind === 'glossary') return `/glossary/#${id}`;
  const room = Object.hasOwn(ROOMS, kind) ? ROOMS[kind] : undefined;
  return room === undefined ? undefined : `${room}/${id}/`;
};

/** Where a reply of the command leads to: the addresses of the site as it stands at the top of its host. */
export const answerLinks: Links = {
  // A film that is soft long past its time is at no stage of its page: there it is chosen among the answers.
  defect: (defect, stage) =>
    `/defects/${defect}/${stage === undefined ? '' : stage === 'overdue' ? '#how-dry' : `stage-${stage}/`}`,
  rule: (rule) => `/safety/${rule}/`,
  page: (kind, id, carried) => {
    const url = pageAt(kind, id);
    return url && carrying(url, carried);
  },
  which: (carried) => carrying('/which-coat/', carried),
  tell: '/tell/',
};
