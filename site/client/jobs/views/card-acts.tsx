import { AnotherLike } from './another-like.tsx';
import { CardFiles } from './card-files.tsx';
import { HandOver } from './hand-over.tsx';
import type { CardActsProps } from './hands.ts';

/** What can be done with a whole card, beside laying a coat. */
export const CardActs = ({ card, data, hands, written }: CardActsProps) => (
  <div class="card-acts">
    <HandOver card={card} data={data} hands={hands} written={written} />
    <AnotherLike card={card} written={written} />
    <CardFiles card={card} written={written} />
  </div>
);
