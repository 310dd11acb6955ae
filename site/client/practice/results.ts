/** The line that a pupil sends back: plain text, so that it goes through any message; read again when it is pasted. */
export type PupilResult = {
  readonly name: string;
  /** For each board: nothing where all was right at once, else what was answered wrong first. */
  readonly wrong: readonly (string | undefined)[];
};

const MARK = 'Halfdry results';
const ID = /^[a-z][a-z0-9-]{0,60}$/;
const LONGEST_NAME = 40;

/** `Halfdry results | Tuesday class | Ann | 2/3 | + bubbles +` */
export const writeResult = (title: string, { name, wrong }: PupilResult): string => {
  const plain = (text: string) => text.replace(/[|\n]+/g, ' ').trim();
  const right = wrong.filter((one) => one === undefined).length;
  return [
    MARK,
    plain(title) || 'a set',
    plain(name).slice(0, LONGEST_NAME) || 'no name',
    `${right}/${wrong.length}`,
    wrong.map((one) => one ?? '+').join(' '),
  ].join(' | ');
};

/** Every result in a pasted text; lines that are none are passed over, as are those for another number of boards. */
export const readResults = (text: string, boards: number): readonly PupilResult[] =>
  text.split('\n').flatMap((line) => {
    const at = line.indexOf(MARK);
    if (at < 0) return [];
    const [, , name = '', , answers = ''] = line
      .slice(at)
      .split('|')
      .map((part) => part.trim());
    const wrong = answers.split(/\s+/).filter(Boolean);
    return wrong.length === boards && wrong.every((one) => one === '+' || ID.test(one))
      ? [{ name: name.slice(0, LONGEST_NAME), wrong: wrong.map((one) => (one === '+' ? undefined : one)) }]
      : [];
  });
