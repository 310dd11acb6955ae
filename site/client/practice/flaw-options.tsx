import type { Dealer } from './load.ts';

/** All flaws, to choose from. */
export const FlawOptions = ({ of: { known } }: { readonly of: Dealer }) => (
  <>
    {known.defects.map(({ id, name }) => (
      <option key={id} value={id}>
        {name}
      </option>
    ))}
  </>
);
