import type { Quantity } from '../units/quantity.ts';
import { isHolder, type Build } from './build.ts';
import { tyresOf } from './candidate.ts';
import type { Spec } from './verdict.ts';

type Mass = Quantity<'mass'>;

/**
 * Masses [kg] of a build by part: the machine, what is on it and the implements chosen, and those
 * that are not known. Only one thing at a time hangs behind, backhoe, implement or ballast: the heaviest counts.
 */
export function massParts({ machine, unit, loader, mower, backhoe, cab, ballast, tools = {} }: Build): {
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
  if (loader) add('loader', loader.have === 'unknown' ? undefined : loader.part.mass, 'loaders.mass');
  else if (unit?.fitted?.loader === true) missing.push('loaders.mass');
  else if (machine.loaders === undefined && unit?.fitted?.loader !== false) missing.push('loaders');
  if (cab) add('cab', cab.part.mass, 'cabs.mass');
  if (mower?.kind === 'belly') add('deck', mower.deck.part.mass, 'decks.mass');
  else if (unit?.fitted?.deck === true) {
    // A deck that is on the unit travels along, whether or not this buyer mows.
    const { decks = [] } = machine;
    add('deck', (decks.find(({ id }) => id === unit.deck) ?? (decks.length === 1 ? decks[0] : undefined))?.mass, 'decks.mass');
  }
  if (unit?.tyres?.liquid === true) {
    const filled = tyresOf({ machine, unit });
    const fills = filled.flatMap(({ fillMass }) => fillMass ?? []);
    add('tyreFill', fills.length === filled.length && fills.length > 0 ? (Math.max(...fills) as Mass) : undefined, 'tyres.fillMass');
  }
  const all = Object.values(tools);
  const hung = [
    mower?.kind === 'rear' ? mower.mower.implement : undefined, ...all.filter((tool) => !isHolder(tool)).map(({ implement }) => implement), backhoe?.part,
  ].flatMap((part) => part ?? []);
  const unweighed = hung.find(({ mass }) => mass === undefined);
  const heaviest = Math.max(ballast?.rear ?? 0, ...hung.flatMap(({ mass }) => mass ?? []));
  if (ballast && ballast.front > 0) parts.frontWeights = ballast.front as Mass;
  if (unweighed) missing.push(backhoe && backhoe.part.mass === undefined ? 'backhoe.mass' : 'implements.mass');
  else if (heaviest > 0) parts.hung = heaviest as Mass;
  const holders = all.filter(isHolder).map(({ implement }) => implement.mass);
  if (holders.includes(undefined)) missing.push('implements.mass');
  else if (holders.length > 0) parts.attachment = Math.max(...holders.map((mass) => mass!)) as Mass;
  return { parts, missing };
}

/** Sum of the masses of a build's parts [kg]. */
export const totalOf = (parts: Readonly<Record<string, Mass>>) => Object.values(parts).reduce<number>((sum, mass) => sum + mass, 0);
