import type { NamedFlaw } from '#engine/hear/belief/named-flaws.ts';
import type { Considered } from '#engine/hear.ts';
import { boardUrl, nowUrl } from '../../shared/urls.ts';
import { chanceSaid } from './words.ts';

const SHOWN = 3;
/** Less likely than this it is not shown beside others. */
const LEAST = 0.02;
/** Less likely than this a flaw that her words name is told as named, not as likely. */
const MAY_BE = 0.25;

/** The likeliest flaws with their boards, to compare with the piece. None that the words name is left out. */
export const LikelyFlaws = ({
  considered: { likely, stage, overdue },
  named,
  boarded,
  each,
  later,
}: {
  readonly considered: Considered;
  readonly named: readonly NamedFlaw[];
  readonly boarded: readonly string[];
  /** More than one is named, and no verdict holds for all of them. */
  readonly each: boolean;
  /** It is still drying, and no flaw yet: what stands before what it may turn out to be. */
  readonly later: string | undefined;
}) => {
  const isNamed = (id: string) => named.some(({ defect }) => defect === id);
  const others = likely.filter(
    ({ defect, chance }, at) => !isNamed(defect) && (at === 0 || chance >= (named.length ? MAY_BE : LEAST)),
  );
  const free = Math.max(0, SHOWN - named.length);
  const shown = likely.filter((flaw) => isNamed(flaw.defect) || others.slice(0, free).includes(flaw));
  return (
    <section class="likely">
      <h2>{later ?? (each ? 'Each has its own answer' : 'What it looks like to me')}</h2>
      <ul>
        {shown.map(({ defect, name, chance }) => (
          <li key={defect}>
            <a href={nowUrl(defect, overdue ? 'overdue' : stage)}>
              {boarded.includes(defect) && (
                <figure class="board">
                  <img
                    src={boardUrl(`defects/${defect}-1`, 'raking')}
                    alt=""
                    width={480}
                    height={360}
                    loading="lazy"
                  />
                </figure>
              )}
              <span class="tape flag">{name}</span>
            </a>
            {later === undefined && (
              <p class="small">{chance < MAY_BE && isNamed(defect) ? 'you named it' : chanceSaid(chance)}</p>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
};
