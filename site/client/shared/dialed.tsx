import { createContext } from 'preact';
import { useContext, useRef, useState } from 'preact/hooks';
import type { CallPlace } from '#engine/model/calls.ts';
import type { Whom } from '#engine/model/whom.ts';
import { CALL_WORDS, callHeads, callRows } from '../../shared/calls.ts';
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
  const here = useContext(Here);
  const [all, setAll] = useState(false);
  const list = useRef<HTMLUListElement>(null);
  const asked = callRows(places, whom);
  const first = asked.find(({ place }) => place === here);
  const rows = first ? [first, ...asked.filter((row) => row !== first)] : asked;
  return (
    <>
      <ul class="calls" ref={list}>
        {(!first || all) && (
          <li data-head>
            <span>{CALL_WORDS.where}</span>
            {callHeads(whom).map((head) => (
              <b key={head}>{head}</b>
            ))}
          </li>
        )}
        {rows.slice(0, first && !all ? 1 : rows.length).map((row) => (
          <li key={row.place.place} {...(row === first && { 'data-own': '' })}>
            <span>{row.name}</span>
            {row.cells.map((cell) =>
              cell ? (
                <a key={cell.says} href={cell.tel}>
                  <i class="unseen">{cell.says}</i>
                  {cell.number}
                </a>
              ) : (
                row !== first && <b key="none" />
              ),
            )}
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
          {CALL_WORDS.others}
        </button>
      )}
    </>
  );
};
