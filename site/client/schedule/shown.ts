import type { Job, Outcome, Planned } from '#engine/schedule.ts';
import type { PlanData } from '../../shared/plan-data.ts';

/** A top coat that a no speaks of in its place, as the form names it. */
export type OtherCoat = { readonly product: string; readonly name: string; readonly tool: string };

/** What a plan is asked with, and how it is shown. */
export type PlanAsked = {
  readonly job: Job;
  readonly data: PlanData;
  readonly us: boolean;
  /** What she calls the can that she kept, where its figures are those of the plan. */
  readonly can: string | undefined;
  /** Read from a link, not from the form. */
  readonly linked: boolean;
  /** The link held a longer name than a piece may have. */
  readonly cut: boolean;
  readonly link: string;
  readonly now: number;
  /** Plans anew from a later start. */
  readonly planFrom: (at: number) => void;
  /** Plans anew with another top coat, and the tool that lays it. */
  readonly planWith: (other: OtherCoat) => void;
  /** Plans anew with another tool. */
  readonly planBy: (tool: string) => void;
  /** Plans anew where a test of every layer found no lead. */
  readonly planTested: () => void;
};
/** All that the view of a plan, or of a no, is made of. */
export type PlanShown<O = Outcome> = PlanAsked & { readonly outcome: O };
export type PlannedShown = PlanShown<Planned>;
