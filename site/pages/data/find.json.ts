import { findIndex } from '../../build/find-index.ts';

export const GET = () => Response.json(findIndex());
