import { beforeEach, describe, expect, it, vi } from 'vitest';

type Event = Record<string, unknown>;

/** The worker in a browser of its own that keeps what it is told to, in this order. */
async function worker({ saveData = false, missing = '' } = {}): Promise<{ kept: string[]; tell(name: string, event?: Event): Promise<void> }> {
  const kept: string[] = [];
  const listeners = new Map<string, (event: Event) => void>();
  const cache = {
    match: async (address: string) => kept.includes(address) || undefined,
    add: async (address: string) => (address === missing ? Promise.reject(new TypeError('not found')) : void kept.push(address)),
    addAll: async (addresses: string[]) => void kept.push(...addresses),
  };
  vi.stubGlobal('caches', { open: async () => cache });
  vi.stubGlobal('navigator', { connection: { saveData } });
  vi.stubGlobal('addEventListener', (name: string, listener: (event: Event) => void) => void listeners.set(name, listener));
  vi.stubGlobal('skipWaiting', async () => {});
  vi.stubGlobal('slidewireFiles', { files: ['index.html', 'look.js', 'a.html', 'b.html'], shared: ['index.html', 'look.js'], digest: 'any' });
  await import('../../generators/practice/page/offline.ts');
  return {
    kept,
    async tell(name, event = {}) {
      const work: Promise<unknown>[] = [];
      listeners.get(name)!({ ...event, waitUntil: (each: Promise<unknown>) => void work.push(each) });
      await Promise.all(work);
    },
  };
}

describe('the worker that keeps the site for use without a connection', () => {
  beforeEach(() => {
    vi.resetModules();
    vi.unstubAllGlobals();
  });

  it('is installed with what pages share, then keeps the page that is open, and the rest once each', async () => {
    const { kept, tell } = await worker();
    await tell('install');
    expect(kept).toEqual(['index.html', 'look.js']);
    await tell('message', { data: { here: ['http://any/a.html'] } });
    expect(kept.toSorted()).toEqual(['a.html', 'b.html', 'http://any/a.html', 'index.html', 'look.js']);
    await tell('message', { data: { here: ['http://any/a.html'] } });
    expect(kept).toHaveLength(5);
  });

  it('keeps no more than what pages share and those that are opened where the browser is to save data', async () => {
    const { kept, tell } = await worker({ saveData: true });
    await tell('install');
    await tell('message', { data: { here: ['http://any/a.html'] } });
    expect(kept).toEqual(['index.html', 'look.js', 'http://any/a.html']);
  });

  it('goes on where a file cannot be fetched', async () => {
    const { kept, tell } = await worker({ missing: 'a.html' });
    await tell('message', { data: { here: [] } });
    expect(kept).toEqual(['index.html', 'look.js', 'b.html']);
  });
});
