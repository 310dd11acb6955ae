import { z } from 'zod';
import { DefectId, QuestionId, RemedyId } from './ids.ts';

const cause = z.string().min(4).optional().describe('The cause found here, in a few plain words.');

const RemedyLeaf = z.strictObject({ remedy: RemedyId, cause });
const DefectLeaf = z.strictObject({ defect: DefectId, because: z.string().min(4).optional() });
const LeaveLeaf = z.strictObject({
  leave: z.string().min(12).describe('Why it is good enough, or normal, as it is.'),
  as: z
    .enum(['oil', 'wax'])
    .optional()
    .describe('Oil or wax: what stands on the face is wiped off while it is wet, all the same.'),
  cause,
});

export type RemedyLeaf = z.infer<typeof RemedyLeaf>;
export type DefectLeaf = z.infer<typeof DefectLeaf>;
export type LeaveLeaf = z.infer<typeof LeaveLeaf>;
export type AskBranch = { ask: z.infer<typeof QuestionId>; yes: Branch; no: Branch };
export type Branch = AskBranch | RemedyLeaf | DefectLeaf | LeaveLeaf;

const AskNode = z.strictObject({
  ask: QuestionId,
  get yes() {
    return Branch;
  },
  get no() {
    return Branch;
  },
});

/** A nested conversation: ask a question, or end in a remedy, another defect, or 'leave it as it is'. */
export const Branch: z.ZodType<Branch> = z.lazy(() =>
  z.union([AskNode, RemedyLeaf, DefectLeaf, LeaveLeaf]),
) as z.ZodType<Branch>;
