import type { Considered } from '#engine/hear.ts';
import { boardUrl, howDryUrl } from '../../shared/urls.ts';
import { chanceSaid } from './words.ts';

const SHOWN = 3;
/** Less likely than this it is not shown beside others. */
const LEAST = 0.02;

/** The likeliest flaws with their boards, to compare with the piece. */
export const LikelyFlaws = ({
  considered: { likely },
  boarded,
}: {
  readonly considered: Considered;
  readonly boarded: readonly string[];
}) => (
  <section class="likely">
    <h2>What it looks like to me</h2>
    <ul>
      {likely
        .slice(0, SHOWN)
        .filter(({ chance }, at) => at === 0 || chance >= LEAST)
        .map(({ defect, name, chance }) => (
          <li key={defect}>
            <a href={howDryUrl(defect)}>
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
            <p class="small">{chanceSaid(chance)}</p>
          </li>
        ))}
    </ul>
  </section>
);
