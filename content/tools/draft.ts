import { Document, isCollection, isPair, isScalar, visit } from 'yaml';
import type { BoardRecipe } from '#engine/model/board.ts';
import type { Defect, Sign } from '#engine/model/defect.ts';
import { templates } from './templates.ts';

/** A file of content that is to be written or changed, named from the root. */
export type Drafted = { readonly file: string; readonly text: string };

/** A new question of which the new flaw is the mark. */
export type DraftQuestion = { readonly id: string; readonly ask: string };
/** A repair in the tree; one without `there` has no file yet. */
export type DraftRemedy = { readonly id: string; readonly name: string; readonly there: boolean };

/** All that was told of a new flaw; what is left empty stands in the file as a place to fill in. */
export type DraftDefect = {
  readonly id: string;
  readonly name: string;
  readonly summary: string;
  readonly often: Defect['often'];
  readonly families: readonly string[];
  readonly alike: readonly string[];
  readonly signs: ReadonlyMap<string, Sign>;
  readonly question: DraftQuestion | undefined;
  /** Repairs; each but the last with the question whose yes calls for it. */
  readonly remedies: readonly { readonly remedy: DraftRemedy; readonly when: string | undefined }[];
  /** A board to begin from. */
  readonly board: BoardRecipe | undefined;
};

/** A list or a map of few words stands on one line, as in the files that are there. */
const SHORT = 100;

const front = (data: object, body: string): string => {
  const document = new Document(data);
  visit(document, {
    Collection: (_key, node, path) => {
      const [parent] = path.slice(-1);
      const top = path.length < 3 && isPair(parent) && isScalar(parent.key) ? String(parent.key.value) : '';
      if (path.length < 2 || top === 'signs' || top === 'also') return;
      const flat = node.items.every((item) => !isCollection(isPair(item) ? item.value : item));
      node.flow = flat && JSON.stringify(node.toJSON()).length < SHORT;
    },
  });
  const yaml = document.toString({ lineWidth: 0 }).replaceAll(/\[ (.*?) \]/g, '[$1]');
  return `---\n${yaml}---\n${body}\n`;
};

type Tree = { readonly remedy: string } | { readonly leave: string } | { ask: string; yes: Tree; no: Tree };

const treeOf = ([first, ...rest]: DraftDefect['remedies']): Tree => {
  if (!first) return { leave: '<Why it is good as it is, until a repair is named.>' };
  const end = { remedy: first.remedy.id };
  return rest.length && first.when ? { ask: first.when, yes: end, no: treeOf(rest) } : end;
};

/** Signs as they stand in the file, with a place for every question that the tree asks. */
const signsOf = ({ signs, question, remedies }: DraftDefect): Record<string, Sign> => ({
  ...Object.fromEntries(signs),
  ...(question ? { [question.id]: 'yes' } : {}),
  ...Object.fromEntries(
    remedies.flatMap(({ when }) =>
      when && !signs.has(when) && when !== question?.id ? [[when, 'either' as const]] : [],
    ),
  ),
});

/** A picture of a look-alike to begin from, without what is usual anyway. */
const boardOf = (recipe: BoardRecipe | undefined): object => ({
  'width-mm': recipe?.['width-mm'] ?? 60,
  base: recipe?.base ?? { paint: 'navy' },
  sheen: recipe?.sheen ?? 'satin',
  features: recipe?.features ?? [],
  alt: '<What tells it apart, for someone who cannot see the picture.>',
});

/** The new flaw's own file. */
export const defectFile = (told: DraftDefect, today: string): Drafted => ({
  file: `content/defects/${told.id}.mdx`,
  text: front(
    {
      name: told.name,
      summary: told.summary || '<What it is, in one or two plain sentences.>',
      'while-wet':
        '<What she must hear while the coat is wet - is it normal, does it go, what makes it worse.>',
      'while-wet-rests-on': { grade: 'common-practice' },
      also: [1, 2, 3, 4].map((number) => `<What people type who have it, ${number}.>`),
      often: told.often,
      families: told.families,
      looks: '<What it looks and feels like, wet and dry and in low side light.>',
      shows: '<When it shows.>',
      signs: signsOf(told),
      'look-alikes': told.alike,
      tree: treeOf(told.remedies),
      prevent: ['<What prevents it.>'],
      boards: [boardOf(told.board)],
      claims: [{ says: '<What this rests on, with its figures.>', grade: 'common-practice' }],
      changes: [{ on: today }],
    },
    '<How to recognize it and why it happens.>',
  ),
});

/** The file of a new question. */
export const questionFile = ({ id, ask }: DraftQuestion): Drafted => ({
  file: `content/questions/${id}.mdx`,
  text: front(
    {
      ask,
      how: '<One sentence - how a beginner checks this.>',
      by: 'look',
      'safe-from': 'wet',
      yes: '<What yes is like.>',
      no: '<What no is like.>',
      sure: '<The cheapest way to make certain.>',
      effort: 1,
      usually: 'no',
      'no-boards': '<Why there is no pair of boards yet.>',
    },
    '',
  ),
});

/** The file of a new repair. */
export const remedyFile = ({ id, name }: DraftRemedy, today: string): Drafted => ({
  file: `content/remedies/${id}.mdx`,
  text: templates.remedy(id, today).replace(/^name: .*$/m, () => `name: ${JSON.stringify(name)}`),
});

/** The text of a look-alike with the sign of a new question as its first one; unchanged where it has no list of signs. */
export const withSign = (text: string, question: string, sign: Sign): string =>
  text.replace(/^signs:[ \t]*$/m, (line) => `${line}\n  ${question}: ${sign}`);
