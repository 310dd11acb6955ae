import { createContext } from 'preact';
import { useContext, useRef, useState } from 'preact/hooks';
import type { CallPlace } from '#engine/model/calls.ts';
import type { Whom } from '#engine/model/whom.ts';
import { placeName, poisonName, telOf } from '../../shared/calls.ts';
import { dialedIn } from '../../shared/dialed.ts';

/** The place where this device seems to be; nothing where it is not known. */
export const Here = createContext<CallPlace | undefined>(undefined);

/** A text whose numbers are dialed with one tap, her own before those of the US. */
export const Dialed = ({ text }: { readonly text: string }) => (
  <>
    {dialedIn(text, useContext(Here)).map(({ text: part, tel }) =>
      tel ? (
        <a key={part} href={tel}>
          {part}
        </a>
      ) : (
        part
      ),
    )}
  </>
);

/** Whom to call: the numbers of where she seems to be, with all others a tap away. Where that is not known, all stand. */
export const Calls = ({
  places,
  whom,
}: {
  readonly places: readonly CallPlace[];
  readonly whom: readonly Whom[];
}) => {
  const emergency = whom.includes('emergency');
  const poison = whom.includes('poison');
  const here = useContext(Here);
  const [all, setAll] = useState(false);
  const list = useRef<HTMLUListElement>(null);
  const asked = places.filter((place) => emergency || (poison && place.poison));
  const first = asked.find((place) => place === here);
  const rows = first ? [first, ...asked.filter((place) => place !== first)] : asked;
  return (
    <>
      <ul class="calls" ref={list}>
        {(!first || all) && (
          <li data-head>
            <span>Where you are</span>
            {emergency && <b>Emergency</b>}
            {poison && <b>Poison line</b>}
          </li>
        )}
        {rows.slice(0, first && !all ? 1 : rows.length).map((place) => (
          <li key={place.place} {...(place === first && { 'data-own': '' })}>
            <span>{placeName(place)}</span>
            {emergency && (
              <a href={telOf(place.emergency)}>
                <i class="unseen">Call </i>
                {place.emergency}
              </a>
            )}
            {poison && place.poison && (
              <a href={telOf(place.poison.number)}>
                <i class="unseen">{poisonName(place.poison)} </i>
                {place.poison.number}
              </a>
            )}
            {poison && !place.poison && place !== first && <b />}
          </li>
        ))}
      </ul>
      {first && !all && (
        <button
          type="button"
          class="quiet"
          onClick={() => {
            setAll(true);
            list.current?.querySelector('a')?.focus();
          }}
        >
          Somewhere else? All countries
        </button>
      )}
    </>
  );
};
