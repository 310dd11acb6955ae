import { type Case, withAnswer } from '#engine/index.ts';
import type { QuestionId } from '#engine/model/ids.ts';
import type { CardFlaw, JobCard } from '#engine/model/job-card.ts';
import type { Stage } from '#engine/model/stage.ts';
import { nodeUrl, nowUrl, seeUrl } from '../../../shared/urls.ts';
import { keepCardInHand } from '../../case/card-in-hand.ts';
import { keepCase } from '../../case/store.ts';
import { walkKnowledge } from '../../shared/walk-knowledge.ts';
import { caseOfCard } from '../parts/clock.ts';
import type { JobsData } from '../parts/data.ts';
import type { JobsFrame } from './frame.ts';

/** To the search for a flaw that is not known yet, which begins with what is on this card and writes to it. */
export const toSearch = async (frame: JobsFrame, card: JobCard, { products }: JobsData): Promise<void> => {
  if (keepCase(await caseOfCard(card, products, Date.now())) && keepCardInHand(card))
    location.assign(seeUrl([]));
  else
    frame.trouble(
      'This browser keeps no notes, so the walk cannot begin with what is on this card, nor write to it.',
      <a href={seeUrl([])}>Begin it without</a>,
    );
};

/** To the page of a flaw for the film as it is now, with the answers that were given for it. */
export const toFlaw = async (
  card: JobCard,
  { products }: JobsData,
  { defect, answers }: CardFlaw,
  stage: Stage | undefined,
): Promise<void> => {
  const on = answers.reduce<Case>(
    (so, [question, answer]) => withAnswer(so, question as QuestionId, answer),
    await caseOfCard(card, products, Date.now()),
  );
  if (keepCase(on)) keepCardInHand(card);
  const [known, { addressFor }] = await Promise.all([
    walkKnowledge(defect),
    import('../../../shared/way.ts'),
  ]);
  location.assign(
    known && stage ? nodeUrl(defect, addressFor(known, defect, stage, on)) : nowUrl(defect, stage),
  );
};
