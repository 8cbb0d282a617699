import type { Machine, Unit } from '../../catalogue/catalogue.ts';
import type { FigureId } from '../../trade/book.ts';
import { hitchLiftAt } from '../../trade/formulas/hitch-lift-at.ts';
import { powerAtAltitude, ptoPowerForWidth } from '../../trade/formulas/pto-power.ts';
import type { Working } from '../../trade/working.ts';
import { atLeast } from '../../units/compare.ts';
import type { Quantity } from '../../units/quantity.ts';
import type { Build, Tool } from '../build.ts';
import type { World } from '../candidate.ts';
import { failed, unknown, wantsAtLeast, worst, type Verdict } from '../verdict.ts';

/** Widths over the rear tyres a candidate may stand on: none where nobody gave that of its tyres. */
export function widthsOverTyres({ tyres = [] }: Machine, unit: Unit | undefined): number[] {
  return tyres
    .filter(({ type }) => unit?.tyres?.type === undefined || type === unit.tyres.type)
    .map(({ widthOverRear }) => widthOverRear);
}

/**
 * PTO power a machine has left where the buyer works. An engine of which nobody said how it breathes is
 * taken for one without a turbocharger, which loses more.
 */
function powerLeft({ engine }: Machine, { book, altitude }: World): { value: number; workings: Working[] } | undefined {
  if (engine?.ptoPower === undefined) return undefined;
  if (altitude === undefined) return { value: engine.ptoPower, workings: [] };
  const turbo = engine.aspiration === 'turbo';
  const working = powerAtAltitude(engine.ptoPower, altitude, {
    perStep: book.value(turbo ? 'pto.altitude.turbo' : 'pto.altitude.natural'),
    step: book.value('pto.altitude.step') as Quantity<'length'>,
    free: (turbo ? book.value('pto.altitude.turbo-free') : 0) as Quantity<'length'>,
  });
  return { value: working.result.value, workings: [working] };
}

/**
 * An implement on hitch and rear PTO: it covers the tyre tracks, the PTO turns it, the hitch lifts it.
 * What it takes is the greater of what its maker asks and the rule of thumb by width.
 */
export function judgeTool({ implement }: Tool, { machine, unit }: Build, world: World, perWidth: FigureId): Verdict {
  const { book } = world;
  const { width, mass, centreDistance, ptoPower } = implement;
  const { hitch, rearPto } = machine;
  if (rearPto?.speeds.length === 0) return failed();
  if (width === undefined) return unknown('implements.width');
  if (mass === undefined) return unknown('implements.mass');
  const verdicts: Verdict[] = [];

  const tracks = widthsOverTyres(machine, unit);
  const covered = tracks.filter((track) => atLeast(width, track)).length;
  if (tracks.length === 0) verdicts.push(unknown('tyres'));
  else verdicts.push(
    covered > 0 && covered < tracks.length && unit
      ? unknown('units.tyres.type')
      : wantsAtLeast(width, covered > 0 ? Math.min(...tracks) : Math.max(...tracks), { unit: 'm', workings: [] }),
  );

  const power = ptoPowerForWidth(width, book.value(perWidth) as Quantity<'powerPerLength'>);
  if (rearPto === undefined) verdicts.push(unknown('rearPto'));
  const available = powerLeft(machine, world);
  verdicts.push(
    available === undefined
      ? unknown('engine.ptoPower')
      : wantsAtLeast(available.value, Math.max(power.result.value, ptoPower ?? 0), { unit: 'W', workings: [...available.workings, power] }),
  );

  const behind = (centreDistance ?? book.value('hitch.rated-behind')) as Quantity<'length'>;
  const lift = hitch?.lift610 !== undefined && hitchLiftAt(
    hitch.lift610, book.value('hitch.rated-behind') as Quantity<'length'>, behind, book.value('hitch.link-length') as Quantity<'length'>,
  );
  verdicts.push(lift ? wantsAtLeast(lift.result.value, mass, { unit: 'kg', workings: [lift] }) : unknown('hitch.lift610'));

  const verdict = worst(verdicts);
  // Where all is met, the power is what a buyer asks about.
  return verdict.outcome === 'met' ? (verdicts.find(({ unit: of }) => of === 'W') ?? verdict) : verdict;
}
