import { CHOICES_OF_THE_PIECE } from '../../model/facts.ts';
import { settled, withoutBeaten } from '../words/mention.ts';
import { mentionsIn, type PostRead } from './choice-mentions.ts';
import { narrowed } from './choice-narrowed.ts';
import { familyOf, type HeardChoices } from './family.ts';

/** The facts of choice that a text tells. */
export const choicesOf = (text: string, post: PostRead): HeardChoices => {
  const { told, against } = mentionsIn(post);
  const family = familyOf(told.get('family') ?? [], told.get('among') ?? [], against.get('family') ?? []);
  const choices = CHOICES_OF_THE_PIECE.flatMap((fact) =>
    settled(
      fact,
      withoutBeaten(fact, narrowed(fact, told.get(fact) ?? [], post, text)),
      against.get(fact) ?? [],
    ),
  );
  return { facts: [...family.facts, ...choices], among: family.among };
};
