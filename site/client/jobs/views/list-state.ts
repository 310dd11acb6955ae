import { useLayoutEffect, useMemo, useState } from 'preact/hooks';
import { type CardList, listCards, readAside } from '../store/index.ts';
import type { Listed } from '../store/listed.ts';
import type { SetAside } from '../store/records.ts';
import type { JobsFrame } from './frame.ts';

/** Rows that are made at once; more come as she scrolls, so that two thousand cards open like twenty. */
const ROWS = 40;

export type ListState = {
  /** How many cards there are; nothing before the list was read. */
  readonly count: number | undefined;
  /** The cards that fit what is searched for, the last changed on top. */
  readonly found: readonly Listed[];
  /** As many of them as have rows by now. */
  readonly shown: readonly Listed[];
  readonly wanted: string;
  readonly find: (text: string) => void;
  readonly more: () => void;
  readonly aside: readonly SetAside[];
  /** Whether the list was asked for, even where it could not be read. */
  readonly tried: boolean;
  /** Reads all anew, as after a change in another tab. */
  readonly read: () => Promise<void>;
};

const NONE: readonly Listed[] = [];
const fits = (text: string) => {
  const wanted = text.trim().toLowerCase();
  return ({ summary }: Listed): boolean => !wanted || (summary?.name.toLowerCase().includes(wanted) ?? false);
};

/**
 * The list of cards. What is found is reckoned from what is wanted at each drawing and never kept: the list may change
 * under a search at any time.
 */
export const useCardList = (trouble: JobsFrame['trouble']): ListState => {
  const [list, setList] = useState<CardList>();
  /** The whole list, where more than its beginning is wanted: that of `list`, or until it is here the one before. */
  const [all, setAll] = useState<readonly Listed[]>();
  const [wanted, setWanted] = useState('');
  const [rows, setRows] = useState(ROWS);
  const [aside, setAside] = useState<readonly SetAside[]>([]);
  const [tried, setTried] = useState(false);

  const { first = NONE, count } = list ?? {};
  const isMore = first.length < (count ?? 0) && (wanted.trim() !== '' || rows > first.length);
  useLayoutEffect(() => {
    let on = true;
    if (isMore)
      list
        ?.all()
        .then((whole) => on && setAll(whole))
        .catch(trouble);
    else setAll(undefined);
    return () => {
      on = false;
    };
  }, [list, isMore]);

  const base = (isMore && all) || first;
  const found = useMemo(() => base.filter(fits(wanted)), [base, wanted]);
  return {
    count,
    found,
    shown: found.slice(0, rows),
    wanted,
    find: (text) => {
      setWanted(text);
      setRows(ROWS);
    },
    more: () => setRows((before) => before + ROWS),
    aside,
    tried,
    read: async () => {
      try {
        setList(await listCards());
        setAside(await readAside());
      } finally {
        setTried(true);
      }
    },
  };
};
