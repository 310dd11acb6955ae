import { type LaidCoat, type Running, sayNow, sayUntil, type TimeStyle, untilOf } from '#engine/clock.ts';
import {
  reached,
  STAGES,
  STANDINGS,
  type Stage,
  type Standing,
  without,
  withStanding,
} from '#engine/index.ts';
import { entryOf } from '#engine/plain/entry-of.ts';
import type { Stretch } from '#engine/plain/time.ts';
import { clockWords } from '../../shared/clock-words.ts';
import { STAGE_WORDS, standingNow } from '../../shared/stages.ts';
import { howDryUrl, nodeUrl, readNodePath } from '../../shared/urls.ts';
import { addressFor } from '../../shared/way.ts';
import looks from '../../styles/by-clock.css?inline';
import { keepCase, readCase } from '../case/store.ts';
import { asPart, button, dropParts, element, partIn } from '../shared/element.ts';
import { wear } from '../shared/late-style.ts';
import { openedAfresh } from '../shared/opened-afresh.ts';
import { walkKnowledge } from '../shared/walk-knowledge.ts';
import { caseNow } from './case-now.ts';
import { chooseCoat } from './store.ts';

wear(looks);

const timeLine = (words: string): HTMLElement => asPart('clock-time', element('time', {}, words));

const standingIn = (segment: string | undefined): Standing | undefined =>
  STANDINGS.find((standing) => segment === `stage-${standing}`);

/** Her own word on how dry it is; it stands until she takes it back or begins a new case. */
const ownStage = (): Stage | undefined => STAGES.find((stage) => readCase().stage?.value === stage);

const says = (running: Running): string => {
  const { stage } = running;
  const own = ownStage();
  const clock = standingNow(running);
  return own && own !== stage
    ? `You said: ${STAGE_WORDS[own].name.toLowerCase()}. The clock says: ${clock}`
    : `The clock says: ${clock}`;
};

/** The page that goes on from what is known; the stage's own page where the tree can not be read now. */
const wayOn = async (defect: string, stage: Stage): Promise<string> => {
  const known = await walkKnowledge(defect);
  const address = known ? addressFor(known, defect, stage, await caseNow()) : [`stage-${stage}`];
  return nodeUrl(defect, address);
};

const sayStage = (link: Element, running: Running, now: number, style: TimeStyle): void => {
  const [stage, go] = link.children;
  if (stage) stage.textContent = says(running);
  const own = ownStage();
  const verdict =
    own && own !== running.stage ? 'Your word counts' : sayNow(clockWords, running, now, style).verdict;
  if (go) go.textContent = `${verdict}. Go on, or correct it below.`;
};

/** How dry is it? The clock answers, on top of the strips that correct it. */
const answerStage = (
  defect: string,
  running: Running,
  now: number,
  style: TimeStyle,
  signal: AbortSignal,
): void => {
  const judge = partIn(document, 'judge');
  const stage = ownStage() ?? running.stage;
  const there = partIn(document, 'by-clock');
  if (there) {
    sayStage(there, running, now, style);
    return;
  }
  const href = nodeUrl(defect, [`stage-${stage}`]);
  const link = element('a', { className: 'tape strip by-clock', href }, element('b'), element('span'));
  sayStage(link, running, now, style);
  judge?.replaceChildren(asPart('by-clock', link));
  void wayOn(defect, stage).then((on) => {
    link.href = on;
    if (goesOnByItself(defect, stage)) location.replace(on);
  });
  partIn(document, 'stages')?.addEventListener(
    'click',
    ({ target }) => {
      const strip = target instanceof Element && target.closest('a');
      const said = strip && standingIn(readNodePath(new URL(strip.href).pathname)?.segments[0]);
      if (said) keepCase(withStanding(readCase(), said, 'answered'));
    },
    { signal },
  );
  if (ownStage()) offerClock(defect, running.stage);
};

const offerClock = (defect: string, stage: Stage): void => {
  const goAgain = () => {
    keepCase(without(without(readCase(), 'stage'), 'overdue'));
    void wayOn(defect, stage).then((href) => location.assign(href));
  };
  partIn(document, 'start')?.append(button('Go by the clock again', goAgain, 'quiet'));
};

/** Only on the way forward, and only while hands must be told: a hard film leaves time to read. */
const goesOnByItself = (defect: string, stage: Stage): boolean => {
  const from = document.referrer && readNodePath(new URL(document.referrer).pathname)?.defect;
  return openedAfresh() && !location.hash && from !== defect && !reached(stage, 'recoatable');
};

/** A page that knows no time says tomorrow; the clock knows one. What it read before the clock is kept for the next tick. */
const sayAgain = (moment: Stretch, now: number, style: TimeStyle): void => {
  const again = partIn(document, 'again');
  if (!again) return;
  const words = again.dataset['words'] ?? again.textContent;
  again.dataset['words'] = words;
  again.textContent = words.replace(
    'tomorrow',
    `from ${untilOf(moment.from, moment.to, now, style).late} on`,
  );
};

/** The clock's time in the verdict, told once: its strip goes (see by-clock.css). When to look again is told by it as well. */
const tellVerdict = (running: Running, now: number, style: TimeStyle): void => {
  const verdict = document.getElementById('verdict');
  const { touch: leave, recoat } = running.moments;
  // What a wax waits for by then is to be buffed, which its look tells.
  const ends = running.buff ? { leave } : { leave, wait: recoat };
  const moment = entryOf(ends, verdict?.dataset['do']);
  dropParts(document, 'clock-time');
  if (!moment || now >= moment.to) return;
  verdict?.firstElementChild?.append(timeLine(` until ${sayUntil(moment.from, moment.to, now, style)}`));
  sayAgain(moment, now, style);
};

/** On a page for another stage than the clock's, no time of the clock stands; it is said instead. */
const tellOther = (defect: string, running: Running): void => {
  const other =
    partIn(document, 'clock-other') ?? asPart('clock-other', element('p', { className: 'by-clock-other' }));
  const link = element('a', { href: howDryUrl(defect) }, 'See how dry it is.');
  other.replaceChildren(`${says(running)}. `, link);
  partIn(document, 'now')?.append(other);
};

/** The coat that answers, the others on the clock that are not cured, and how each is called. */
type Whose = {
  readonly coat: LaidCoat;
  readonly others: readonly LaidCoat[];
  readonly nameOf: (coat: LaidCoat) => string;
};

/** From now on this coat answers, on the page for how dry it is. */
const goBy = async (coat: LaidCoat, defect: string): Promise<void> => {
  await chooseCoat(coat);
  const said = (await caseNow()).stage?.value;
  const stage = STAGES.find((one) => one === said);
  location.assign(stage ? await wayOn(defect, stage) : howDryUrl(defect));
};

/** Of several coats: whose time it is, and a way to go by another. */
const sayWhose = (defect: string, { coat, others, nameOf }: Whose): void => {
  const there = partIn(document, 'whose');
  if (!others.length || there?.dataset['coat'] !== coat.id) dropParts(document, 'whose');
  if (!others.length || there?.dataset['coat'] === coat.id) return;
  const whose = element(
    'p',
    { className: 'acts' },
    element('b', {}, `By the clock of ${nameOf(coat)}.`),
    ...others.map((other) => button(`It is ${nameOf(other)}`, () => void goBy(other, defect), 'quiet')),
  );
  whose.dataset['coat'] = coat.id;
  const place = partIn(document, 'now') ?? partIn(document, 'start');
  place?.append(asPart('whose', whose));
};

/** Tells the pages of a walk what the clock knows of the film. */
export const showClockOnWalk = (
  whose: Whose,
  running: Running,
  now: number,
  style: TimeStyle,
  signal: AbortSignal,
): void => {
  const node = readNodePath(location.pathname);
  if (!node) return;
  sayWhose(node.defect, whose);
  if (!node.segments.length) {
    answerStage(node.defect, running, now, style, signal);
    return;
  }
  const here = standingIn(node.segments[0]);
  if (!here) return;
  if (here === running.stage) {
    dropParts(document, 'clock-other');
    tellVerdict(running, now, style);
  } else {
    dropParts(document, 'clock-time');
    tellOther(node.defect, running);
  }
};
