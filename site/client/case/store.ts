import { type Case, emptyCase } from '#engine/index.ts';
import { forget, keep, recall } from '../shared/storage.ts';

/** The case kept in this browser; empty where there is none, it is damaged, or storage is denied. */
export const readCase = (): Case => recall('case')?.facts ?? emptyCase();

/** Keeps the case. False where the browser refuses (storage full or denied): tell her. */
export const keepCase = (facts: Case): boolean => keep('case', { version: 1, facts });

/** Forgets the case. False where the browser refuses. */
export const forgetCase = (): boolean => forget('case');

/** Whether this browser keeps anything at all. */
export const canKeep = (): boolean => keepCase(readCase());
