import type { Quantity } from '../units/quantity.ts';
import type { Build } from './build.ts';
import type { Spec } from './verdict.ts';

type Mass = Quantity<'mass'>;

/**
 * Masses [kg] of a build by part: the machine, what is on it and the implements chosen, and those
 * that are not known. Only one thing at a time hangs behind, backhoe or implement: the heaviest counts.
 */
export function massParts({ machine, loader, mower, backhoe, cab, cutter, spear, forks }: Build): {
  parts: Record<string, Mass>;
  missing: Spec[];
} {
  const parts: Record<string, Mass> = {};
  const missing: Spec[] = [];
  const add = (name: string, mass: Mass | undefined, spec: Spec) => {
    if (mass === undefined) missing.push(spec);
    else parts[name] = mass;
  };
  add('machine', machine.mass, 'mass');
  if (loader) add('loader', loader.part.mass, 'loaders.mass');
  if (cab) add('cab', cab.part.mass, 'cabs.mass');
  if (mower?.kind === 'belly') add('deck', mower.deck.part.mass, 'decks.mass');
  const hung = [mower?.kind === 'rear' ? mower.mower.implement : undefined, cutter?.implement, backhoe?.part].flatMap((part) => part ?? []);
  const unweighed = hung.find(({ mass }) => mass === undefined);
  const heaviest = Math.max(0, ...hung.flatMap(({ mass }) => mass ?? []));
  if (unweighed) missing.push(backhoe && backhoe.part.mass === undefined ? 'backhoe.mass' : 'implements.mass');
  else if (heaviest > 0) parts.hung = heaviest as Mass;
  const held = Math.max(0, ...[spear, forks].flatMap((tool) => tool?.implement.mass ?? []));
  if (held > 0) parts.attachment = held as Mass;
  return { parts, missing };
}
