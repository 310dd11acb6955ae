/** A step of a wording as a pattern: `a|b*`, `_`. Apostrophes may be typed in two ways, or left out. */
const stepOf = (step: string): string =>
  step === '_'
    ? String.raw`\w+`
    : `(?:${step
        .split('|')
        .map((word) => word.replace("'", "[’']?").replace('*', String.raw`\w*`))
        .join('|')})`;

const patternOf = (wording: string): string => {
  const steps = wording.split(' ');
  return steps
    .map((step, at) => {
      if (step === '...') return '';
      const next = steps[at + 1];
      // What may be missing takes the blank behind it along.
      const behind = next === undefined ? '' : next === '...' ? String.raw`\b[^.?!]*\b` : ' ';
      return step.endsWith('?') ? `(?:${stepOf(step.slice(0, -1))}${behind})?` : stepOf(step) + behind;
    })
    .join('');
};

/** All wordings of one kind as one pattern, in text, so that it can be sent. */
export const patternOfWordings = (wordings: readonly string[]): string =>
  String.raw`\b(?:${wordings.map(patternOf).join('|')})\b`;
