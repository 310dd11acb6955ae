import { counted } from '../../shared/counted.ts';
import { sayDate } from '../../shared/say-date.ts';
import { saveFound } from '../files/export.ts';
import { dropAside, putAsideBack } from '../store/index.ts';
import type { SetAside } from '../store/records.ts';
import { Act } from './controls.tsx';
import { useFrame } from './frame.ts';

/** Cards that could not be read and are out of the way. */
export const AsideList = ({
  all,
  again,
}: {
  readonly all: readonly SetAside[];
  readonly again: () => Promise<void>;
}) => {
  const frame = useFrame();
  if (!all.length) return null;
  const back = (one: SetAside) => async () => {
    if (!(await putAsideBack(one)))
      frame.say(`“${one.name}” stands in the list by now, so the damaged one stays aside.`);
    await again();
  };
  const away = (one: SetAside) => async () => {
    const sure = await frame.ask({
      says: `Take what was set aside of “${one.name}” away for good?`,
      yes: 'Delete it',
      no: 'Keep it',
    });
    if (sure) await dropAside(one.id);
    if (sure) await again();
  };
  return (
    <details class="aside">
      <summary>{`Set aside: ${counted(all.length, 'damaged card')}`}</summary>
      <ul>
        {all.map((one) => (
          <li key={one.id}>
            <b>{one.name}</b>, {sayDate(one.at)}{' '}
            <Act act={() => saveFound(one.id, one.raw, one.photos)}>Save it as a file</Act>{' '}
            <Act act={back(one)}>Put it back into the list</Act>{' '}
            <Act class="quiet away" act={away(one)}>
              Delete it…
            </Act>
          </li>
        ))}
      </ul>
    </details>
  );
};
