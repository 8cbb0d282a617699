import type { Quantity } from '../units/quantity.ts';
import type { Build } from './build.ts';

type Mass = Quantity<'mass'>;

/**
 * Masses [kg] of a build by part: the machine, what is on it and the implements chosen, and the paths of
 * those that are not known. Only one implement at a time hangs on the hitch: the heaviest counts.
 */
export function massParts({ machine, loader, mower, cab, cutter, spear, forks }: Build): {
  parts: Record<string, Mass>;
  missing: string[];
} {
  const parts: Record<string, Mass> = {};
  const missing: string[] = [];
  const add = (name: string, mass: Mass | undefined, path: string) => {
    if (mass === undefined) missing.push(path);
    else parts[name] = mass;
  };
  add('machine', machine.mass, 'mass');
  if (loader) add('loader', loader.part.mass, `loaders.${loader.part.id}.mass`);
  if (cab) add('cab', cab.part.mass, `cabs.${cab.part.id}.mass`);
  if (mower?.kind === 'belly') add('deck', mower.deck.part.mass, `decks.${mower.deck.part.id}.mass`);
  const hung = [mower?.kind === 'rear' ? mower.mower : undefined, cutter].flatMap((tool) => (tool ? [tool.implement] : []));
  const unweighed = hung.find(({ mass }) => mass === undefined);
  const heaviest = Math.max(0, ...hung.flatMap(({ mass }) => mass ?? []));
  if (unweighed) missing.push('implements.mass');
  else if (heaviest > 0) parts.implement = heaviest as Mass;
  const held = Math.max(0, ...[spear, forks].flatMap((tool) => tool?.implement.mass ?? []));
  if (held > 0) parts.attachment = held as Mass;
  return { parts, missing };
}
