import type { Base } from '../sheets/sheets.ts';

/** The trade's own steps of size, smallest first, with the names a buyer reads. */
const usual: Readonly<Record<string, string>> = { subcompact: 'Subcompact', small: 'Small compact', mid: 'Mid-size compact', 'wide-mid': 'Wide mid-size compact', large: 'Large compact' };
export const usualFrames: readonly string[] = Object.keys(usual);

const nameOf = (id: string) => usual[id] ?? `${id.charAt(0).toUpperCase()}${id.slice(1).replaceAll('-', ' ')}`;

/** The dealer's frames and some more behind them, by their ids. */
export function framesWith(frames: Base['frames'], ids: readonly string[]): Base['frames'] {
  const last = Math.max(0, ...frames.map((frame) => frame.order));
  return [...frames, ...ids.map((id, index) => ({ id, name: nameOf(id), order: last + index + 1 }))];
}

/**
 * The dealer's frames, and those of the trade's usual ones that his machines name besides, in their order. Another word is
 * as likely a slip: it is for him to say that it is a size. Without any, all usual ones are there to choose from.
 */
export function withFrames(base: Base, named: readonly string[]): Base {
  const known = new Set(base.frames.map(({ id }) => id));
  const more = usualFrames.filter((id) => named.includes(id) && !known.has(id));
  const added = base.frames.length === 0 && more.length === 0 ? usualFrames : more;
  return added.length === 0 ? base : { ...base, frames: framesWith(base.frames, added) };
}
