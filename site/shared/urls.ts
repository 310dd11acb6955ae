/**
 * The folder that the site stands in, with both slashes: `/` where it stands at the top of its host. Every address of
 * the site is spelled in this file. All end in a slash, data files excepted.
 */
export const BASE = import.meta.env.BASE_URL;

export const HOME = BASE;
export const CLOCK = `${BASE}clock/`;
export const SCHEDULE = `${BASE}schedule/`;
export const JOBS = `${BASE}jobs/`;
export const DEFECTS = `${BASE}defects/`;
export const REMEDIES = `${BASE}remedies/`;
export const LEARN = `${BASE}learn/`;
export const FIRST_COAT = `${BASE}first-coat/`;
/** Which kind of top coat to take for a piece. */
export const WHICH_COAT = `${BASE}which-coat/`;
/** Where the kinds of finish are told apart. */
export const WHICH_CAN = `${FIRST_COAT}#can`;
export const GLOSSARY = `${BASE}glossary/`;
export const SAFETY = `${BASE}safety/`;
export const SOURCES = `${BASE}sources/`;
export const ABOUT = `${BASE}about/`;
export const DATA = `${BASE}data/`;
export const SEARCH = `${BASE}search/`;
export const DATA_SET = `${BASE}data/halfdry.json`;
export const DATA_SCHEMA = `${BASE}data/schema.json`;
export const JOBS_SCHEMA = `${BASE}data/jobs.schema.json`;
export const FEED = `${BASE}feed.xml`;
export const MANIFEST = `${BASE}manifest.webmanifest`;
export const TELL = `${BASE}tell/`;
export const PRACTICE = `${BASE}learn/practice/`;
export const PRACTICE_SHEET = `${PRACTICE}sheet/`;
/** Boards, flaws and questions for a big screen. */
export const SHOW = `${BASE}learn/show/`;
/** Boards as pictures for a post. */
export const PICTURES = `${BASE}learn/pictures/`;
/** Sheets for the wall and the bench, each one page. */
export const WALL_CARD = `${BASE}learn/wall-card/`;
export const SIGN_KEY = `${BASE}learn/sign-key/`;
export const BOARD_SHEET = `${BASE}learn/board-sheet/`;

/** Where on a defect's page the question about the stage stands. */
export const HOW_DRY = 'how-dry';

export const seeUrl = (address: readonly string[]) => BASE + ['see', ...address, ''].join('/');
export const defectUrl = (id: string) => `${BASE}defects/${id}/`;
export const howDryUrl = (id: string) => `${BASE}defects/${id}/#${HOW_DRY}`;
export const nodeUrl = (id: string, address: readonly string[]) =>
  `${BASE}defects/${id}/${address.join('/')}/`;
/**
 * What to do about a flaw: at its stage where that is known, else from the question about it on. Not every flaw has a
 * page for a film that is overdue: the question leads to the one that has.
 */
export const nowUrl = (id: string, stage: string | undefined) =>
  stage && stage !== 'overdue' ? nodeUrl(id, [`stage-${stage}`]) : howDryUrl(id);
export const remedyUrl = (id: string) => `${BASE}remedies/${id}/`;
export const iconUrl = (name: string) => `${BASE}icons/${name}.png`;
export const shortUrl = (id: string) => `${BASE}r/${id}/`;
export const boardUrl = (name: string, view: string) => `${BASE}boards/${name}-${view}.webp`;
export const lessonUrl = (id: string) => `${BASE}learn/${id}/`;
export const termUrl = (id: string) => `${BASE}glossary/#${id}`;
/** The page of a rule; the list of all where none is named yet, as in the markup that the script fills. */
export const ruleUrl = (id: string) => (id ? `${BASE}safety/${id}/` : `${BASE}safety/`);
export const sourceUrl = (id: string) => `${BASE}sources/${id}/`;
export const sourceKindUrl = (kind: string) => `${BASE}sources/kind/${kind}/`;

/** The page of a search hit; kinds of finish share one. */
export const hitUrl = (kind: string, id: string): string | undefined => {
  const of: Record<string, (id: string) => string> = {
    defect: defectUrl,
    remedy: remedyUrl,
    lesson: lessonUrl,
    rule: ruleUrl,
    glossary: termUrl,
    product: () => WHICH_CAN,
    page: (tool) => `${BASE}${tool}/`,
  };
  return of[kind]?.(id);
};

/** What stands beside the lessons and is none. */
const BESIDE_LESSONS = [PRACTICE, SHOW, PICTURES, WALL_CARD, SIGN_KEY, BOARD_SHEET];

/** The card image of a page, by its address: of the flaw, repair or lesson that it is about, else of the site. */
export const cardImageUrl = (path: string): string => {
  const [top = '', id] = segmentsOf(path);
  if (BESIDE_LESSONS.some((tool) => path.startsWith(tool))) return `${BASE}cards/halfdry.jpg`;
  const folder = { defects: 'defects', remedies: 'remedies', learn: 'lessons' }[top];
  return folder && id ? `${BASE}cards/${folder}/${id}.jpg` : `${BASE}cards/halfdry.jpg`;
};

/** The parts of an address below the folder of the site. */
export const segmentsOf = (path: string): string[] =>
  (path.startsWith(BASE) ? path.slice(BASE.length) : path).split('/').filter(Boolean);

/** The defect and the segments below it that an address names, if it is the address of a node. */
export const readNodePath = (path: string): { defect: string; segments: string[] } | undefined => {
  const [top, defect, ...segments] = segmentsOf(path);
  return top === 'defects' && defect ? { defect, segments } : undefined;
};

/** The segments of an address of the search for the flaw. */
export const readSeePath = (path: string): string[] | undefined => {
  const [top, ...segments] = segmentsOf(path);
  return top === 'see' ? segments : undefined;
};
