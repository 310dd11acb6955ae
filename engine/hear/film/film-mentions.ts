import { STAGES, type Stage } from '../../model/stage.ts';
import { isMerely } from '../words/laying.ts';
import type { Manner } from '../words/manner.ts';
import type { Match } from '../words/match.ts';
import type { Span, Word } from '../words/words.ts';
import { bareStage } from './bare-stage.ts';
import { isHowItIsDone, isInCan, isNotYetDry, isOfThen } from './not-dry.ts';
import { isOfLayer, spanIn } from './soft.ts';

/** Words that tell how dry the film is. */
export type Mention = {
  readonly stage: Stage;
  readonly span: Span;
  /** How it feels, and not only that it dried: no later stage is meant. */
  readonly felt: boolean;
};

export const rank = (stage: Stage): number => STAGES.indexOf(stage);

/** Not told, but planned, feared, over, of how a thing is done or of another time. */
const isNotOfNow = (words: readonly Word[], match: Match, manner: Manner): boolean =>
  manner.notYet(match) ||
  manner.feared(match) ||
  manner.over(match) ||
  isMerely(words, match.from) ||
  isHowItIsDone(words, match) ||
  isOfThen(words, match) ||
  // "I'm going to lay three coats"
  words.slice(match.from, match.to).some(({ word }) => word === 'going');

/** Of what is in the can, of a film that is not dry yet, or of another layer. */
const isOfNoFilm = (words: readonly Word[], matches: readonly Match[], match: Match, stage: Stage): boolean =>
  (stage === 'setting' && isInCan(words, match)) ||
  (rank(stage) >= rank('dry-to-touch') && isNotYetDry(words, match)) ||
  (stage !== 'wet' && isOfLayer(words, matches, match));

const BODY =
  /^(hand|hands|skin|arm|arms|finger|fingers|leg|legs|sleeve|shirt|clothes|touch|anything|everything)$/;
/** "paint won't stick to my dresser" tells of its grip, and of no film that is dry */
const isGrip = (words: readonly Word[], { from, to }: Match): boolean =>
  words[from]?.word === 'stick' &&
  words[to]?.part === words[from]?.part &&
  !words.slice(from, to + 2).some(({ word }) => BODY.test(word));

/** "not dry" is setting; "not sticky" is dry to the touch; a denied "cured" says nothing. */
const WHERE_DENIED: Readonly<Partial<Record<Stage, Stage>>> = {
  'dry-to-touch': 'setting',
  setting: 'dry-to-touch',
};

const meantBy = (words: readonly Word[], match: Match, manner: Manner, stage: Stage): Stage | undefined => {
  if (manner.denied(match) === undefined) return stage;
  return isGrip(words, match) ? undefined : WHERE_DENIED[stage];
};

const spelledOut = (words: readonly Word[], matches: readonly Match[], manner: Manner): Mention[] =>
  matches.flatMap((match) => {
    const [fact, value] = match.of;
    if (match.kind !== 'fact' || fact !== 'stage' || isNotOfNow(words, match, manner)) return [];
    const told = value as Stage;
    if (isOfNoFilm(words, matches, match, told)) return [];
    const stage = meantBy(words, match, manner, told);
    const felt = words.slice(match.from, match.to).some(({ word }) => /^(touch|feels?)$/.test(word));
    return stage ? [{ stage, span: spanIn(words, match), felt }] : [];
  });

/** What is said of how dry the film is; where nothing is spelled out, the bare word at the end of a query. */
export const mentionsOf = (
  words: readonly Word[],
  matches: readonly Match[],
  manner: Manner,
): readonly Mention[] => {
  const found = spelledOut(words, matches, manner);
  if (found.length) return found;
  const bare = bareStage(words, matches);
  return bare ? [{ ...bare, felt: false }] : [];
};
