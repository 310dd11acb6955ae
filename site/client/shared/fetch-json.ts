import type { DataFile } from '../../shared/data-files.ts';

/** The network, or whoever answered in its place, did not give what was asked for. Everything else is a bug and stays one. */
export class NetworkFault extends Error {
  /** What the host answered; nothing where nobody did. */
  readonly status: number | undefined;

  constructor(address: string, status: number | undefined, cause?: unknown) {
    super(`${address}: ${status === undefined ? 'no answer' : `answer ${status}`}`, { cause });
    this.name = 'NetworkFault';
    this.status = status;
  }
}

/** What lies at an address of this site. Throws a `NetworkFault` where it does not come. */
export const fetched = async (address: string): Promise<Response> => {
  const url = new URL(address, location.href);
  let answer: Response;
  try {
    answer = await fetch(url);
  } catch (cause) {
    throw new NetworkFault(address, undefined, cause);
  }
  if (!answer.ok) throw new NetworkFault(address, answer.status);
  return answer;
};

/**
 * A data file of this site, written by the same build as the script that asks for it, so its type is that of the build.
 * Throws a `NetworkFault` where it does not come or is no JSON: a sign-in page of a hotel answers with 200, too.
 */
export const fetchJson = async <T>({ url }: DataFile<T>): Promise<T> => {
  const answer = await fetched(url);
  try {
    return await answer.json();
  } catch (cause) {
    throw new NetworkFault(url, answer.status, cause);
  }
};

/**
 * A file of the program that did not come, or in whose place a sign-in page came. Browsers tell it as a `TypeError`, as
 * any slip of ours, so the words decide: those of Chromium and Gecko (“… dynamically imported module: address”), and of
 * WebKit (“Importing a module script failed.”, “… is not a valid JavaScript MIME type.”, the latter from memory).
 */
const NOT_COME = /imported module|module script failed|MIME type/i;

/** A part of the program that comes late. Throws a `NetworkFault` where it does not come; what it throws itself is a bug. */
export const late = <T>(load: () => Promise<T>): Promise<T> =>
  load().catch((error: unknown) => {
    if (error instanceof TypeError && NOT_COME.test(error.message))
      throw new NetworkFault(error.message, undefined, error);
    throw error;
  });

/** What was asked of the network, or nothing where it did not give it. A bug is thrown on. */
export const unlessOffline = <T>(asked: Promise<T>): Promise<T | undefined> =>
  asked.catch((error: unknown) => {
    if (error instanceof NetworkFault) return undefined;
    throw error;
  });

/** A request that is made once and shared; one that failed is made anew when it is next asked for. */
export const fetchedOnce = <T>(file: DataFile<T>): (() => Promise<T>) => {
  let asked: Promise<T> | undefined;
  return () => {
    asked ??= fetchJson(file).catch((error: unknown) => {
      asked = undefined;
      throw error;
    });
    return asked;
  };
};
