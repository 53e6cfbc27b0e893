interface Waiting<K, V> {
  readonly key: K;
  readonly resolve: (value: V) => void;
  readonly reject: (error: unknown) => void;
}

/** Most questions that are put together. */
const mostTogether = 100;

/**
 * Puts questions that come while one is being answered together into the next: a hundred that come at once wait for the
 * database twice, not a hundred times. A question is never answered by what was read before it came. Where several fail
 * together, each is put once more by itself.
 */
export function gathered<K, V>(answer: (keys: readonly K[]) => Promise<readonly V[]>): (key: K) => Promise<V> {
  const waiting: Waiting<K, V>[] = [];
  let running = false;

  const put = async (group: readonly Waiting<K, V>[]): Promise<void> => {
    try {
      const values = await answer(group.map(({ key }) => key));
      for (const [i, { resolve }] of group.entries()) resolve(values[i]!);
    } catch (error) {
      if (group.length === 1) return group[0]!.reject(error);
      for (const each of group) await put([each]);
    }
  };

  const run = async (): Promise<void> => {
    running = true;
    // What is asked in one turn of the program goes together.
    await Promise.resolve();
    while (waiting.length > 0) await put(waiting.splice(0, mostTogether));
    running = false;
  };

  return (key) =>
    new Promise<V>((resolve, reject) => {
      waiting.push({ key, resolve, reject });
      if (!running) void run();
    });
}
