import type { Base } from '../sheets/sheets.ts';

/** The trade's own steps of size, smallest first, with the names a buyer reads. */
const usual: Readonly<Record<string, string>> = { subcompact: 'Subcompact', small: 'Small compact', mid: 'Mid-size compact', 'wide-mid': 'Wide mid-size compact', large: 'Large compact' };
const order = Object.keys(usual);

const nameOf = (id: string) => usual[id] ?? `${id.charAt(0).toUpperCase()}${id.slice(1).replaceAll('-', ' ')}`;

/** The dealer's frames, and those his machines name besides: the usual ones in their order, others behind them. */
export function withFrames(base: Base, named: readonly string[]): Base {
  const known = new Set(base.frames.map(({ id }) => id));
  const more = [...new Set(named)].filter((id) => !known.has(id));
  if (more.length === 0) return base;
  const rank = (id: string) => (order.includes(id) ? order.indexOf(id) : order.length);
  const ids = base.frames.length > 0 ? more : more.sort((a, b) => rank(a) - rank(b));
  const last = Math.max(0, ...base.frames.map((frame) => frame.order));
  return { ...base, frames: [...base.frames, ...ids.map((id, index) => ({ id, name: nameOf(id), order: last + index + 1 }))] };
}
