export type DefinitionRow = readonly [name: string, says: string];

/** Names with what each is, a line a pair. */
export const DefinitionRows = ({
  of,
  class: look,
}: {
  readonly of: readonly DefinitionRow[];
  readonly class: string;
}) => (
  <dl class={look}>
    {of.map(([name, says]) => (
      <div key={name}>
        <dt>{name}</dt>
        <dd>{says}</dd>
      </div>
    ))}
  </dl>
);
