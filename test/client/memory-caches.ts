/** The Cache API in memory, as far as second copies use it: what a test may also tear, refuse or hold up. */
type Kept = { readonly body: ArrayBuffer; readonly type: string };

export class MemoryCaches {
  /** By the name of the cache and the address of the entry. */
  readonly kept = new Map<string, Map<string, Kept>>();
  /** Called before each write and each deletion; what it throws is what the browser throws. */
  refuse: (does: 'put' | 'delete', address: string) => void = () => undefined;

  async has(name: string): Promise<boolean> {
    return this.kept.has(name);
  }

  async delete(name: string): Promise<boolean> {
    return this.kept.delete(name);
  }

  async keys(): Promise<string[]> {
    return [...this.kept.keys()];
  }

  async open(name: string) {
    // One that is deleted while it is open goes on by itself, and what it takes is nowhere.
    const entries = this.kept.get(name) ?? new Map<string, Kept>();
    this.kept.set(name, entries);
    return {
      put: async (address: string, response: Response) => {
        this.refuse('put', address);
        const kept = { body: await response.arrayBuffer(), type: response.headers.get('Content-Type') ?? '' };
        entries.set(new URL(address).href, kept);
      },
      match: async (address: string) => {
        const found = entries.get(new URL(address).href);
        return found && new Response(found.body.slice(0), { headers: { 'Content-Type': found.type } });
      },
      delete: async (address: string) => {
        this.refuse('delete', address);
        return entries.delete(new URL(address).href);
      },
      keys: async () => [...entries.keys()].map((url) => ({ url })),
    };
  }

  /** The ids with their versions, as they stand in one cache. */
  standing(name: string): readonly (readonly [string, number])[] {
    return [...(this.kept.get(name)?.keys() ?? [])].map((url) => {
      const { searchParams } = new URL(url);
      return [searchParams.get('id') ?? '', Number(searchParams.get('at'))] as const;
    });
  }

  /** Cuts entries short, as a browser does that is killed while it writes them. */
  tear(name: string, which: (id: string, at: number) => boolean): void {
    for (const [url, { body, type }] of this.kept.get(name) ?? []) {
      const { searchParams } = new URL(url);
      if (which(searchParams.get('id') ?? '', Number(searchParams.get('at'))))
        this.kept.get(name)?.set(url, { body: body.slice(0, body.byteLength / 2), type });
    }
  }
}
