type Props = {
  readonly label: string;
  readonly most: number;
  readonly value: string;
  readonly type: (value: string) => void;
};

/** A line of text under its label, no longer than `most` letters. */
export const TextLine = ({ label, most, value, type }: Props) => (
  <label>
    {label}{' '}
    <input
      type="text"
      maxLength={most}
      value={value}
      onInput={({ currentTarget }) => type(currentTarget.value)}
    />
  </label>
);

/** The same where it is longer than the field: all of it is in sight, and it stays one line of text. */
export const LongTextLine = ({ label, most, value, type }: Props) => (
  <label>
    {label}{' '}
    <textarea
      rows={2}
      maxLength={most}
      value={value}
      onInput={({ currentTarget }) => type(currentTarget.value.replaceAll('\n', ' '))}
    />
  </label>
);
