/** The part of d3-hierarchy that the tree drawing uses; the package brings no types. */
declare module 'd3-hierarchy' {
  export interface Placed<Data> {
    readonly data: Data;
    readonly depth: number;
    readonly parent: Placed<Data> | null;
    /** Across the direction in which the tree grows. */
    readonly x: number;
    /** Along it. */
    readonly y: number;
    /** This one and all below it, parents first. */
    descendants(): Placed<Data>[];
    /** Visits this one, then each below it with all that is below that. */
    eachBefore(visit: (one: Placed<Data>) => void): this;
  }
  export interface Layout<Data> {
    (root: Placed<Data>): Placed<Data>;
    nodeSize(size: readonly [number, number]): this;
    separation(apart: () => number): this;
  }
  export function hierarchy<Data>(
    root: Data,
    below: (data: Data) => readonly Data[] | undefined,
  ): Placed<Data>;
  export function tree<Data>(): Layout<Data>;
}
