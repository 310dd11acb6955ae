import { jobFileSchema } from '#engine/model/read-card.ts';

export const GET = () => Response.json(jobFileSchema());
