import { withFilmIn } from '#engine/calc/say-film.ts';
import { layingOfCase } from '#engine/fitness.ts';
import type { Case } from '#engine/index.ts';
import { filmToSand } from '#engine/jobs/advice.ts';
import type { Step } from '#engine/model/step.ts';
import { byHand } from '#engine/steps/hands.ts';
import type { AdviceData } from '../../shared/advice-data.ts';
import type { SheetKnowledge } from '../../shared/advice-knowledge.ts';
import { clockWords } from '../../shared/clock-words.ts';
import { asPart, dropParts, element, partIn } from '../shared/element.ts';
import { unlessOffline } from '../shared/fetch-json.ts';
import { noesOfKind } from '../shared/judge.ts';
import { pageUnits } from '../shared/say-date.ts';

const SHOWN_STEPS = '[data-step]:not([hidden])';

/** The film that lies there, before the first step that sands it; of a stripped face nothing is known. */
const tellFilm = (sanding: AdviceData['sanding'], procedure: ParentNode, on: Case): void => {
  dropParts(procedure, 'film-so-far');
  const found = filmToSand(sanding, clockWords, on);
  const first = procedure.querySelector('[data-kind=sand]:not([hidden]), [data-kind=strip]:not([hidden])');
  if (!found || !first?.matches('[data-kind=sand]')) return;
  const film = element(
    'p',
    { className: 'limit' },
    element('b', {}, 'The film so far: '),
    withFilmIn(found.says, pageUnits()),
  );
  if (found.first) film.append(' This goes before what the step says.');
  partIn(first, 'do')?.before(asPart('film-so-far', film));
};

/** The kind of top coat that a step lays; nothing where it lays none. */
const kindLaid = (step: Step | undefined, on: Case): unknown => {
  if (step?.kind !== 'coat') return undefined;
  switch (step.product) {
    case 'same':
    case 'same-in-gloss':
    case 'tinted-same':
    case 'mist-of-same':
      return on['family']?.value;
    case 'dewaxed-shellac':
      return 'shellac';
    case 'water-based':
    case 'wax':
    case 'oil':
      return step.product;
    default:
      return undefined;
  }
};

const stepsOf = (known: Pick<SheetKnowledge, 'get'>, procedure: HTMLElement): readonly Step[] =>
  known.get('remedy', procedure.dataset['remedy'] ?? '').steps;

/** How each step is done with what was told, how she knows that it is done, and what if not. */
const tellHands = (
  known: SheetKnowledge,
  { hands, sanding }: AdviceData,
  procedure: HTMLElement,
  on: Case,
): void => {
  const unsanded = filmToSand(sanding, clockWords, on)?.first;
  for (const old of procedure.querySelectorAll('[data-hand]')) old.remove();
  const steps = stepsOf(known, procedure);
  for (const item of procedure.querySelectorAll<HTMLElement>(SHOWN_STEPS)) {
    const step = steps[Number(item.dataset['step'])];
    // What is said of sanding a whole face is not said of a film that bears it not, or not yet.
    if (!step || (unsanded && step.kind === 'sand')) continue;
    const { how, done, ifNot } = byHand(known, hands, on, step);
    const say = (words: string): void => {
      const line = element('p', { className: 'worked' }, words);
      line.dataset['hand'] = '';
      (partIn(item, 'do')?.parentElement ?? item).append(line);
    };
    if (how) say(how);
    if (done && !partIn(item, 'worked')) say(`Done when: ${done} If not: ${ifNot}`);
  }
};

/** What stands at the steps of a repair beside its rules: the film so far, and how each is done by these hands. */
export const fitStepNotes = (
  known: SheetKnowledge,
  advice: AdviceData,
  procedure: HTMLElement,
  on: Case,
): void => {
  tellFilm(advice.sanding, procedure, on);
  tellHands(known, advice, procedure, on);
};

/** What forbids the first coat of a repair in the air that is told, said before it as a plan would say it. */
export const fitCoatRefusal = async (
  known: SheetKnowledge,
  procedure: HTMLElement,
  on: Case,
): Promise<void> => {
  const steps = stepsOf(known, procedure);
  const shown = [...procedure.querySelectorAll<HTMLElement>(SHOWN_STEPS)];
  const sourceOf = ({ dataset }: HTMLElement) => steps[Number(dataset['step'])];
  const first = shown.find((item) => kindLaid(sourceOf(item), on));
  // What lay below is gone with a film that is taken off.
  const stripped = shown.some(
    (item, at) => first && at < shown.indexOf(first) && sourceOf(item)?.kind === 'strip',
  );
  const laying = first && layingOfCase(on, { onOwnCoat: !stripped });
  const noes =
    laying &&
    (await unlessOffline(
      noesOfKind(
        kindLaid(sourceOf(first), on),
        { ...laying, base: stripped ? undefined : laying.base },
        pageUnits(),
      ),
    ));
  dropParts(procedure, 'no-coat');
  // The stops of the rules stand on the page already.
  for (const { says, instead } of noes?.filter(({ code }) => code !== 'rule') ?? []) {
    const why = [says, instead].filter(Boolean).join(' ');
    const line = element('p', { className: 'limit' }, element('b', {}, 'As told, no: '), why);
    if (first) partIn(first, 'do')?.before(asPart('no-coat', line));
  }
};
