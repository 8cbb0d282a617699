import { byCodeUnit } from '../units/compare.ts';
import type { Need } from '../needs/need.ts';
import type { Addition } from './addition.ts';
import { isHolder, type Build, type Tool } from './build.ts';
import type { Have } from './candidate.ts';
import { once } from './once.ts';
import type { Verdict } from './verdict.ts';

interface Part {
  id?: string;
  price?: { value: number } | undefined;
  labourHours?: number | undefined;
  availability?: string | undefined;
  mass?: Addition['mass'] | undefined;
}

/** Had in these ways, a part is fitted in the shop. */
const later = ['field-kit', 'aftermarket'];

/** A part as it would be bought and fitted. */
export const bought = (what: Addition['what'], part: Part, needs: readonly string[]): Addition => ({
  what,
  ...(part.id !== undefined && { id: part.id }),
  ...(part.price && { price: part.price.value }),
  ...(part.labourHours !== undefined && { labourHours: part.labourHours }),
  ...(part.labourHours === undefined && later.includes(part.availability ?? '') && { labourAsked: true as const }),
  ...(part.mass !== undefined && { mass: part.mass }),
  for: needs,
});

const added = (what: Addition['what'], state: Have, part: Part, needs: readonly string[]) =>
  state === 'has' ? [] : [bought(what, part, needs)];

const tool = (each: Tool | undefined, build: Build, needs: readonly string[]) => {
  const onIt = each?.implement.id !== undefined && build.unit?.attachments?.includes(each.implement.id);
  if (!each || each.owned || onIt) return [];
  // One the dealer doesn't list goes by its kind, its price to be asked.
  return [bought('implement', { ...each.implement, id: each.implement.id ?? each.implement.kind! }, needs)];
};

/**
 * What must be bought for a build, with what each is for. Two needs for one thing are served by one: of
 * ballast and the like the heaviest counts.
 */
export function additionsOf(build: Build, verdicts: readonly Verdict[], needs: readonly Need[]): Addition[] {
  const wantedBy = (prefix: string) => once(needs, prefix, () => needs.flatMap(({ id, capability }) => (capability.startsWith(prefix) ? [id] : [])));
  const { loader, mower, cab, backhoe, tools = {}, machine } = build;
  // What holds a load is for the needs of that load; what hangs behind, for all that its task asks of it.
  const servedBy = (task: string, each: Tool) => once(needs, `${task} ${isHolder(each)}`, () =>
    needs.flatMap((need) => (need.task === task && (!isHolder(each) || 'holder' in need) ? [need.id] : [])));
  const chosen: Addition[] = [
    ...(loader ? added('loader', loader.have, loader.part, wantedBy('loader.')) : []),
    ...(mower?.kind === 'belly' ? added('deck', mower.deck.have, mower.deck.part, wantedBy('mower')) : []),
    ...(mower?.kind === 'belly' && machine.midPto ? added('mid-pto', mower.midPto, machine.midPto, wantedBy('mower')) : []),
    ...(backhoe ? added('backhoe', backhoe.have, backhoe.part, wantedBy('backhoe')) : []),
    ...(cab ? added('cab', cab.have, cab.part, wantedBy('cab')) : []),
    ...tool(mower?.kind === 'rear' ? mower.mower : undefined, build, wantedBy('mower')),
    ...Object.entries(tools).sort(([a], [b]) => byCodeUnit(a, b)).flatMap(([task, each]) => tool(each, build, servedBy(task, each))),
  ];
  const found = verdicts.flatMap(({ additions = [] }) => additions);
  if (chosen.length + found.length < 2) return [...chosen, ...found];
  const merged = new Map<string, Addition>();
  for (const each of [...chosen, ...found]) {
    const key = each.what === 'implement' || each.what === 'feature' ? `${each.what} ${each.id}` : each.what;
    const other = merged.get(key);
    const heavier = other && (other.mass ?? 0) >= (each.mass ?? 0) ? other : each;
    merged.set(key, other ? { ...heavier, for: [...new Set([...other.for, ...each.for])].sort(byCodeUnit) } : each);
  }
  return [...merged.values()];
}
