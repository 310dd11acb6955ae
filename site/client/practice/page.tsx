import { useEffect, useState } from 'preact/hooks';
import { ClassSet } from './class.tsx';
import { canDeal, type Dealer } from './load.ts';
import { MakeClass } from './make-class.tsx';
import { Practise } from './practise.tsx';
import { readLink } from './state.ts';

/** Practice by oneself, or the set of a class where the address names one. */
export const PracticePage = ({ dealer }: { readonly dealer: Dealer }) => {
  const [hash, setHash] = useState(location.hash);
  useEffect(() => {
    const follow = () => setHash(location.hash);
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }, []);
  const link = readLink(hash);
  const boards = link.boards.filter((key) => canDeal(dealer, key));
  if (boards.length && !link.making)
    return (
      <ClassSet
        key={hash}
        dealer={dealer}
        title={link.title}
        boards={boards}
        lost={link.boards.length - boards.length + link.unread}
      />
    );
  return (
    <>
      {!link.making && (link.title || link.boards.length + link.unread > 0) && (
        <p role="status">
          <b>This link holds no board that can be shown.</b> It was cut off, or its flaws are no longer in the
          book. Ask for it once more; until then practice here by yourself.
        </p>
      )}
      <Practise dealer={dealer} level={link.level ?? 'look'} />
      <MakeClass dealer={dealer} link={{ ...link, boards }} />
    </>
  );
};
