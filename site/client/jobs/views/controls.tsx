import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useReducer, useRef, useState } from 'preact/hooks';
import { everyTick } from '../../shared/tick.ts';
import { useFrame } from './frame.ts';

/** The part of the address that stands for the list of all cards. */
export const LIST = '#';

type ActProps = {
  readonly act: () => unknown;
  readonly class?: string;
  readonly children: ComponentChildren;
  readonly mark?: string;
};
/** A button that does one thing; where that fails, it is told. */
export const Act = ({ act, class: look = 'quiet', children, mark }: ActProps) => {
  const frame = useFrame();
  const click = async () => {
    try {
      await act();
    } catch (error) {
      frame.trouble(error);
    }
  };
  return (
    <button type="button" class={look} data-mark={mark} onClick={() => void click()}>
      {children}
    </button>
  );
};

/** A form that the page brought with it, in this place for as long as the place is there; shown at once, or by whoever wires it. */
export const Adopted = ({
  element,
  shown = true,
}: {
  readonly element: HTMLElement;
  readonly shown?: boolean;
}) => {
  const holder = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const home = element.parentElement;
    holder.current?.append(element);
    if (shown) element.hidden = false;
    return () => {
      element.hidden = true;
      home?.append(element);
    };
  }, [element]);
  return <div class="adopted" ref={holder} />;
};

/** What is loaded before a view can stand; nothing until then. A fault is told. */
export const useLoaded = <T,>(load: () => Promise<T>, key: string): T | undefined => {
  const frame = useFrame();
  const [loaded, setLoaded] = useState<T>();
  useLayoutEffect(() => {
    let wanted = true;
    load().then((value) => wanted && setLoaded(() => value), frame.trouble);
    return () => {
      wanted = false;
    };
  }, [key]);
  useLayoutEffect(() => {
    if (loaded !== undefined) frame.shown();
  }, [loaded !== undefined]);
  return loaded;
};

/** Draws anew what does not live in the state of the view. */
export const useRedraw = (): (() => void) => useReducer<number, void>((count) => count + 1, 0)[1];

/** The time, told again and again, epoch milliseconds. */
export const useNow = (): number => {
  const { signal } = useFrame();
  const [now, setNow] = useState(Date.now());
  useLayoutEffect(() => everyTick(() => setNow(Date.now()), signal), []);
  return now;
};

/** The form of a piece that the page brought with it. */
export const pieceFormIn = (host: HTMLElement): HTMLFormElement => {
  const form = host.querySelector('form[data-part=about]');
  if (!(form instanceof HTMLFormElement)) throw new Error('the page brought no form for the piece');
  return form;
};
