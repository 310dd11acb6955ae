import { dialedIn } from '../../shared/dialed.ts';

/** A text whose numbers are dialed with one tap. */
export const Dialed = ({ text }: { readonly text: string }) => (
  <>
    {dialedIn(text).map(({ text: part, tel }) =>
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
