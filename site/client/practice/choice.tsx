import type { ComponentChildren } from 'preact';

type Props = {
  readonly label: string;
  readonly value: string;
  readonly choose: (value: string) => void;
  /** Said where nothing is chosen yet. */
  readonly none?: string;
  readonly of?: readonly (readonly [value: string, says: string])[];
  readonly children?: ComponentChildren;
};

/** One of several, under its label: those that are listed, or options of its own. */
export const Choice = ({ label, value, choose, none, of = [], children }: Props) => (
  <label>
    {label}{' '}
    <select value={value} onChange={({ currentTarget }) => choose(currentTarget.value)}>
      {none !== undefined && <option value="">{none}</option>}
      {of.map(([one, says]) => (
        <option key={one} value={one}>
          {says}
        </option>
      ))}
      {children}
    </select>
  </label>
);
