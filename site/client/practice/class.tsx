import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { PracticeKey } from '#engine/practice.ts';
import { PRACTICE } from '../../shared/urls.ts';
import { CopyButton } from '../shared/copy-button.tsx';
import { counted } from '../shared/counted.ts';
import { plainId } from '../shared/plain-id.ts';
import { PracticeItemView } from './item.tsx';
import { canDeal, type Dealer, deal } from './load.ts';
import { PrintSet } from './print-set.tsx';
import { readResults, writeResult } from './results.ts';
import { TextLine } from './text-line.tsx';

type Props = {
  readonly dealer: Dealer;
  readonly title: string;
  readonly boards: readonly PracticeKey[];
  /** Boards of the link that this knowledge does not have any more. */
  readonly lost: number;
};

/** The set of a class: the same boards for everybody, in one order, and a line to send back. */
export const ClassSet = ({ dealer, title, boards, lost }: Props) => {
  const [at, setAt] = useState(0);
  const [wrong, setWrong] = useState<readonly (string | undefined)[]>([]);
  const key = boards[at];
  const item = useMemo(() => key && deal(dealer, key), [dealer, key]);
  const heading = title || 'A set of boards';
  return (
    <>
      <h2 class="class-title" id="class">
        {heading}
      </h2>
      <p>
        {item ? `Board ${at + 1} of ${boards.length}` : `${counted(boards.length, 'board')}, all answered`}
        {lost > 0 && `. Left out, since the link was cut or the book has changed: ${counted(lost, 'board')}`}
      </p>
      {item ? (
        <PracticeItemView
          key={item.id}
          item={item}
          onAnswered={(first) => setWrong([...wrong, first])}
          onNext={() => setAt(at + 1)}
          nextSays={at + 1 < boards.length ? 'Next board' : 'See the result'}
          follows={at ? `Board ${at + 1} of ${boards.length}` : undefined}
        />
      ) : (
        <ClassResult title={title} wrong={wrong} />
      )}
      <ClassResults dealer={dealer} boards={boards} />
      <PrintSet dealer={dealer} title={heading} boards={boards} />
      <p>
        <a href={PRACTICE}>Practice by yourself</a>
      </p>
    </>
  );
};

const ClassResult = ({
  title,
  wrong,
}: {
  readonly title: string;
  readonly wrong: readonly (string | undefined)[];
}) => {
  const [name, setName] = useState('');
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus();
  }, []);
  const right = wrong.filter((one) => one === undefined).length;
  const line = writeResult(title, { name, wrong });
  return (
    <section class="result">
      <h2 ref={heading} tabIndex={-1}>
        {right} of {wrong.length} right at once
      </h2>
      <TextLine label="Your name, if your teacher wants it" most={40} value={name} type={setName} />
      <p class="post">{line}</p>
      <CopyButton look="go" says="Copy the line to send back" text={line} what="line" />
    </section>
  );
};

/** For the teacher: lines that came back, pasted, and what the class took for what. */
const ClassResults = ({ dealer, boards }: Pick<Props, 'dealer' | 'boards'>) => {
  const [text, setText] = useState('');
  const results = readResults(text, boards.length);
  const nameOf = (id: string): string =>
    dealer.known.has('defect', id) ? dealer.known.get('defect', id).name : plainId(id);
  return (
    <details class="fold results">
      <summary>For the teacher: read the lines that came back</summary>
      <label>
        Paste them here, one or many
        <textarea rows={4} value={text} onInput={({ currentTarget }) => setText(currentTarget.value)} />
      </label>
      {text.trim() !== '' && (
        <p role="status">
          {results.length === 0 ? 'No line of this set is in it.' : `${counted(results.length, 'result')}.`}
        </p>
      )}
      {results.length > 0 && (
        <table>
          <thead>
            <tr>
              <th scope="col">Board</th>
              <th scope="col">Right at once</th>
              <th scope="col">Taken for</th>
            </tr>
          </thead>
          <tbody>
            {boards.map((key, index) => {
              const missed = results.flatMap(({ wrong }) => wrong[index] ?? []);
              return (
                <tr key={`${key.level}.${key.flaw}.${key.seed}`}>
                  <th scope="row">
                    {index + 1}. {canDeal(dealer, key) ? nameOf(key.flaw) : key.flaw}
                  </th>
                  <td>
                    {results.length - missed.length} of {results.length}
                  </td>
                  <td>{[...new Set(missed)].map(nameOf).join(', ')}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      )}
      {results.length > 0 && (
        <ul>
          {results.map(({ name, wrong }, index) => (
            <li key={`${index}${name}`}>
              {name}: {wrong.filter((one) => one === undefined).length} of {boards.length}
            </li>
          ))}
        </ul>
      )}
    </details>
  );
};
