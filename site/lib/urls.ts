/** Every address of the site is spelled here. All end in a slash, data files excepted. */
export const HOME = '/';
export const DEFECTS = '/defects/';
export const REMEDIES = '/remedies/';
export const GLOSSARY = '/glossary/';
export const SOURCES = '/sources/';
export const ABOUT = '/about/';
export const DATA = '/data/';
export const SEARCH = '/search/';
export const DATA_SET = '/data/halfdry.json';
export const DATA_SCHEMA = '/data/schema.json';
export const FIND_INDEX = '/data/find.json';

/** The signs of all defects, for the script of the search for the flaw. */
export const SIGN_TABLE = '/see/table.json';

/** Where on a defect's page the question about the stage stands. */
export const HOW_DRY = 'how-dry';

export const seeUrl = (address: readonly string[]) => ['/see', ...address, ''].join('/');
export const defectUrl = (id: string) => `/defects/${id}/`;
export const howDryUrl = (id: string) => `/defects/${id}/#${HOW_DRY}`;
export const nodeUrl = (id: string, address: readonly string[]) => `/defects/${id}/${address.join('/')}/`;
export const walkDataUrl = (id: string) => `/defects/${id}/walk.json`;
export const remedyUrl = (id: string) => `/remedies/${id}/`;
export const shortUrl = (id: string) => `/r/${id}/`;
export const boardUrl = (name: string, view: string) => `/boards/${name}-${view}.webp`;
export const termUrl = (id: string) => `/glossary/#${id}`;
export const sourceUrl = (id: string) => `/sources/${id}/`;
export const sourceKindUrl = (kind: string) => `/sources/kind/${kind}/`;

/** The page of a search hit; kinds that have no page of their own have none. */
export const hitUrl = (kind: string, id: string): string | undefined =>
  kind === 'defect'
    ? defectUrl(id)
    : kind === 'remedy'
      ? remedyUrl(id)
      : kind === 'glossary'
        ? termUrl(id)
        : undefined;

/** The defect and the segments below it that an address names, if it is the address of a node. */
export const readNodePath = (path: string): { defect: string; segments: string[] } | undefined => {
  const [top, defect, ...segments] = path.split('/').filter(Boolean);
  return top === 'defects' && defect ? { defect, segments } : undefined;
};

/** The segments of an address of the search for the flaw. */
export const readSeePath = (path: string): string[] | undefined => {
  const [top, ...segments] = path.split('/').filter(Boolean);
  return top === 'see' ? segments : undefined;
};
