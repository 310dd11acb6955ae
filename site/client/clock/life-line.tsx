import { type LaidCoat, lifeLine, type Running } from '#engine/clock.ts';
import { STAGES } from '#engine/index.ts';
import { STAGE_WORDS } from '../../shared/stages.ts';

const LINE = 320;
const SHARE = LINE / STAGES.length;
/** Short words, so that five of them stand beside each other. */
const SHORT: Readonly<Partial<Record<(typeof STAGES)[number], string>>> = {
  'dry-to-touch': 'Touch-dry',
  recoatable: 'Recoatable',
};

type Props = { readonly reading: Running; readonly coat: LaidCoat; readonly now: number };

/** The life of the film as a line, and where it is now. */
export const LifeLine = ({ reading, coat, now }: Props) => {
  const { now: place, bands } = lifeLine(reading, coat.laidAt, now);
  return (
    <svg class="life" viewBox={`0 0 ${LINE} 58`} role="img">
      <title>The life of the film, and now</title>
      {bands.map(({ stage, sure, to }, index) => (
        <g key={stage}>
          <rect class={`sure s${index}`} x={index * SHARE} y={20} width={SHARE} height={14} />
          <rect class="maybe" x={sure * LINE} y={20} width={(to - sure) * LINE} height={14} />
          <text x={index * SHARE + SHARE / 2} y={50} text-anchor="middle">
            {(reading.closed && stage === 'recoatable' && 'Dry, no coat') ||
              (SHORT[stage] ?? STAGE_WORDS[stage].name)}
          </text>
        </g>
      ))}
      <g class="now">
        <path d={`M${place * LINE} 14v24`} />
        <text x={Math.min(LINE - 12, Math.max(12, place * LINE))} y={10} text-anchor="middle">
          now
        </text>
      </g>
    </svg>
  );
};
