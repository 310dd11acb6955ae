import type { Issue } from '../faults/issue.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import { actionsFitTheStage } from './actions-fit-the-stage.ts';
import { boardsAreThere } from './boards-are-there.ts';
import { boardsFit } from './boards-fit.ts';
import { checksCutNothing } from './checks-cut-nothing.ts';
import { checksTouchNoWetFilm } from './checks-touch-no-wet-film.ts';
import { chestsStand } from './chests-stand.ts';
import { coatsHoldOnCoats } from './coats-on-coats.ts';
import { everythingIsReached } from './everything-is-reached.ts';
import { hazardsAreCautioned } from './hazards-are-cautioned.ts';
import { lessonsAreCautioned } from './lessons-are-cautioned.ts';
import { lookAlikesDiffer } from './look-alikes-differ.ts';
import { looksChangeNothing } from './looks-change-nothing.ts';
import { namesAreApart } from './names-are-apart.ts';
import { noQuestionTwice } from './no-question-twice.ts';
import { repairsKeepToTheTrade } from './repairs-keep-to-the-trade.ts';
import { signsAgree } from './signs-agree.ts';
import { signsCoverTheTree } from './signs-cover-the-tree.ts';
import { stepsAreInOrder } from './steps-are-in-order.ts';
import { stepsKeepToWhatIsTold } from './steps-keep-to-what-is-told.ts';
import { stepsTellWhatTheyDo } from './steps-tell-what-they-do.ts';
import { timesAgree } from './times-agree.ts';
import { tintsStayWithinLimits } from './tints-stay-within-limits.ts';
import { whatComesOffIsTold } from './what-comes-off-is-told.ts';
import { wordsOrderNoTouch } from './words-order-no-touch.ts';

/** One thing that must hold of the whole knowledge. */
type Proof = (known: Knowledge) => Iterable<Issue>;

const PROOFS: readonly Proof[] = [
  noQuestionTwice,
  actionsFitTheStage,
  wordsOrderNoTouch,
  timesAgree,
  stepsAreInOrder,
  repairsKeepToTheTrade,
  coatsHoldOnCoats,
  stepsKeepToWhatIsTold,
  stepsTellWhatTheyDo,
  looksChangeNothing,
  whatComesOffIsTold,
  chestsStand,
  checksCutNothing,
  checksTouchNoWetFilm,
  hazardsAreCautioned,
  lessonsAreCautioned,
  tintsStayWithinLimits,
  lookAlikesDiffer,
  signsCoverTheTree,
  signsAgree,
  everythingIsReached,
  boardsAreThere,
  boardsFit,
  namesAreApart,
];

/** Every issue that the proofs find, by file and line. */
export const prove = (known: Knowledge): readonly Issue[] =>
  PROOFS.flatMap((proof) => [...proof(known)]).sort((a, b) =>
    a.file === b.file ? a.line - b.line : a.file < b.file ? -1 : 1,
  );
