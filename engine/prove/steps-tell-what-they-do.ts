import type { Issue } from '../faults/issue.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import type { Entry } from '../model/knowledge.ts';
import type { Step } from '../model/step.ts';
import { meansOf, surelyOf, toldBy } from '../rules/hazards.ts';
import { stepsOfAct } from '../walk/act.ts';
import { hazardsSaid, orderedIn } from './hazard-words.ts';
import { isOneLine } from './one-line.ts';

/**
 * An order to spray, also where it is only one of two ways: who takes it is told of mist by a step that surely sprays.
 */
const SPRAY = /^(outdoors, )?spray\b|\b(or|brush,) spray\b|\bspray (it|one|a|the|black|over)\b/i;

const REACHES = ['old-film', 'old-film-in-reach'];
/** Where a repair first reaches an old layer; behind its end where it never does. */
const reachedIn = ({ steps }: Entry<'remedy'>): number => {
  const index = steps.findIndex((step) => does(step).some((hazard) => REACHES.includes(hazard)));
  return index < 0 ? steps.length : index;
};

/** A step that has to say itself that an old layer is in reach. */
const reachUntold = (
  remedy: Entry<'remedy'>,
  index: number,
  word: string,
  of: 'step' | 'laid' = 'step',
): Issue => ({
  file: remedy.file,
  line: remedy.lineOf(['steps', index]),
  code: 'hazard-untold',
  of,
  step: remedy.steps[index]?.say ?? '',
  isOneLine: isOneLine(remedy.lineOf, ['steps', index], remedy.steps[index] ?? {}),
  hazards: ['old-film-in-reach'],
  word,
});

const TESTED = /\b(?:sands? to|makes?|make) (?:dry )?powder\b/i;
/** Powder is made by paper, and a test with it reaches an old layer at an edge as any sanding does. */
function* paperTestsTell(remedy: Entry<'remedy'>): Generator<Issue> {
  const index = remedy.steps.findIndex((step) => step.kind === 'wait' && TESTED.test(step.say));
  const [word] = remedy.steps[index]?.say.match(TESTED) ?? [];
  if (word && index < reachedIn(remedy)) yield reachUntold(remedy, index, word);
}

const LAID_WET: readonly string[] = ['fresh-oil', 'oil', 'fresh-wax', 'wax'];
/** Oil that is rubbed in with paper: a stop between the two would leave it to set, and so it stands before the oil. */
function* wetOilTells(remedy: Entry<'remedy'>): Generator<Issue> {
  const { steps } = remedy;
  const reached = reachedIn(remedy);
  for (const [index, step] of steps.slice(0, reached < steps.length ? reached : 0).entries()) {
    const laid = meansOf(step).find((means) => LAID_WET.includes(means));
    if (laid && steps[index + 1]?.kind === 'sand')
      yield reachUntold(remedy, index, laid.replace('fresh-', ''), 'laid');
  }
}

/** The line is looked up where there is a fault: the parser that knows lines takes longer than this proof. */
type ToldText = {
  readonly remedy: Entry<'remedy'>;
  readonly at: readonly PropertyKey[];
  readonly say: string;
  readonly of: 'step' | 'act' | 'if-not';
  /** What the text is a field of. */
  readonly whole: object;
};

/** The hazards that words tell of and that nothing around them has. */
function* untold({ remedy, at, say, of, whole }: ToldText, told: ReadonlySet<string>): Generator<Issue> {
  const lacking = [...hazardsSaid(say)].filter(([hazard]) => !told.has(hazard));
  for (const [word, all] of Map.groupBy(lacking, ([, said]) => said))
    yield {
      file: remedy.file,
      line: remedy.lineOf(at),
      code: 'hazard-untold',
      of,
      step: say,
      isOneLine: isOneLine(remedy.lineOf, at.at(-1) === 'say' ? at.slice(0, -1) : at, whole),
      hazards: all.map(([hazard]) => hazard),
      word,
    };
}

/** What a step is known to do for some facts, but of mist: a coat of which it is not said is laid by hand as well. */
const does = (step: Step): readonly string[] =>
  [...toldBy(step)].filter((hazard) => hazard !== 'mist' || surelyOf(step).has('mist'));

const doesAll = (steps: readonly Step[]): ReadonlySet<string> => new Set(steps.flatMap(does));

/** What is said before a repair may begin: its cautions hang on what it does, as those of a step. */
function* actsTell(remedy: Entry<'remedy'>): Generator<Issue> {
  for (const [stage, act] of Object.entries(remedy.now)) {
    if (!act || act.do === 'repair') continue;
    const text = { remedy, at: ['now', stage, 'say'], say: act.say, of: 'act', whole: act } as const;
    yield* untold(text, doesAll(stepsOfAct(act)));
  }
}

/** What is ordered where a repair has failed has its cautions in the steps above it, or in those it leads to. */
function* nextTriesTell(known: Knowledge, remedy: Entry<'remedy'>): Generator<Issue> {
  const { say, remedy: next } = remedy['if-not'];
  const steps = [...remedy.steps, ...(next ? known.get('remedy', next).steps : [])];
  const text = { remedy, at: ['if-not', 'say'], say, of: 'if-not', whole: remedy['if-not'] } as const;
  yield* untold(text, doesAll(steps));
}

/**
 * A step whose words tell of a hazard has it: by its kind, by what it uses, or by a mark under `does`. So has what is
 * said of a stage, and what is ordered where it has failed.
 */
export function* stepsTellWhatTheyDo(known: Knowledge): Generator<Issue> {
  for (const remedy of known.remedies) {
    for (const [index, step] of remedy.steps.entries()) {
      const tells = new Set(does(step));
      const [spray] = orderedIn(step.say).match(SPRAY) ?? [];
      if (spray && !tells.has('mist') && !hazardsSaid(step.say).has('mist'))
        yield {
          file: remedy.file,
          line: remedy.lineOf(['steps', index]),
          code: 'hazard-untold',
          of: 'step',
          step: step.say,
          isOneLine: isOneLine(remedy.lineOf, ['steps', index], step),
          hazards: ['mist'],
          word: spray,
        };
      yield* untold({ remedy, at: ['steps', index], say: step.say, of: 'step', whole: step }, tells);
    }
    yield* paperTestsTell(remedy);
    yield* wetOilTells(remedy);
    yield* actsTell(remedy);
    yield* nextTriesTell(known, remedy);
  }
}
