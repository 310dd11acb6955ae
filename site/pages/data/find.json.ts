import { findIndex } from '../../lib/find-index.ts';

export const GET = () => Response.json(findIndex());
