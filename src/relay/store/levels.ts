import type { Instant, Take } from './store.ts';

/** What was left in a bucket, and when. */
export interface Level { bucket: string; level: number; at: Instant }
/** `fullAt`: when it needn't be remembered any more. */
export interface NewLevel extends Level { fullAt: Instant }

/**
 * Takes from buckets that fill up steadily, all or none. A clock that is put back fills nothing and empties nothing.
 *
 * @param keptOf  what was kept of a bucket; undefined where it is full
 * @returns what to keep, or how long until all could be taken [ms]
 */
export function taken(takes: readonly Take[], now: Instant, keptOf: (bucket: string) => Level | undefined): { levels: NewLevel[] } | { after: number } {
  const levels = new Map<string, number>();
  let after = 0;
  for (const { bucket, most, fills } of takes) {
    const kept = levels.has(bucket) ? undefined : keptOf(bucket);
    const level = levels.get(bucket) ?? (kept ? Math.min(most, kept.level + Math.max(0, now - kept.at) * most / fills) : most);
    levels.set(bucket, level - 1);
    if (level < 1) after = Math.max(after, (1 - level) * fills / most);
  }
  if (after > 0) return { after };
  const each = [...new Map(takes.map((take) => [take.bucket, take])).values()];
  return { levels: each.map(({ bucket, most, fills }) => ({ bucket, level: levels.get(bucket)!, at: now, fullAt: Math.ceil(now + (most - levels.get(bucket)!) * fills / most) })) };
}
