type Props = {
  readonly label: string;
  readonly most: number;
  readonly value: string;
  readonly type: (value: string) => void;
  /** So many lines of it are in sight. */
  readonly rows?: number;
};

/** A line of text under its label, no longer than `most` letters. */
export const TextLine = ({ label, most, value, type, rows = 1 }: Props) => (
  <label>
    {label}{' '}
    {rows > 1 ? (
      <textarea
        rows={rows}
        maxLength={most}
        value={value}
        onInput={({ currentTarget }) => type(currentTarget.value.replaceAll('\n', ' '))}
      />
    ) : (
      <input
        type="text"
        maxLength={most}
        value={value}
        onInput={({ currentTarget }) => type(currentTarget.value)}
      />
    )}
  </label>
);
