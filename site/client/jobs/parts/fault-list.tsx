import { type CardFault, sayCardFault } from '#engine/jobs.ts';

/** What could not be read, a line a fault. */
export const FaultList = ({ faults }: { readonly faults: readonly CardFault[] }) =>
  faults.length ? (
    <ul>
      {faults.map((fault, index) => (
        <li key={index}>{sayCardFault(fault).trim()}</li>
      ))}
    </ul>
  ) : null;
