import { type ComponentChildren, createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Question } from './ask.tsx';

/** What each view of the job cards is given by the page around it. */
export type JobsFrame = {
  /** Holds the forms that the page brought with it. */
  readonly host: HTMLElement;
  readonly title: (text: string) => void;
  /** Read out, and shown until the next. */
  readonly say: (words?: ComponentChildren) => void;
  /** Stays until it is over. */
  readonly trouble: (error: unknown, more?: ComponentChildren) => void;
  readonly calm: () => void;
  /** Asks before something that can not be taken back at once. */
  readonly ask: (question: Question) => Promise<boolean>;
  /** The view stands: what was waiting for it, such as the focus, may come. */
  readonly shown: () => void;
  /** To the name of what is shown, for those who go by keys, where the button that was pressed is gone. */
  readonly toTitle: () => void;
  /** What another tab has changed; called until the view is left. */
  readonly onOthers: (changed: (ids: readonly string[]) => void) => void;
  /** Asked before another view takes its place; false where something is not written yet. */
  readonly beforeLeaving: (may: () => Promise<boolean>) => void;
  /** Ends when the view is left. */
  readonly signal: AbortSignal;
};

const Frame = createContext<JobsFrame | undefined>(undefined);
export const FrameProvider = Frame.Provider;

export const useFrame = (): JobsFrame => {
  const frame = useContext(Frame);
  if (!frame) throw new Error('a view of the job cards stands outside of their frame');
  return frame;
};
