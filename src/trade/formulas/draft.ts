import { atLeast, atMost } from '../../units/compare.ts';
import { inUnit, quantity, type Quantity } from '../../units/quantity.ts';
import { term, type Refusal, type Working } from '../working.ts';

/** The standard's own parameters of a tool: newtons for each metre (or tool) and centimetre, at km/h. */
export interface Tool {
  a: number;
  b: number;
  c: number;
}

const fastest = quantity('speed', 15, 'km/h');
const deepest = quantity('length', 60, 'cm');

/**
 * Draft of a tool that works the soil: D = F·(A + B·S + C·S²)·W·T with S in km/h and T in cm. The
 * standard expects single tools to lie 25 to 50 % to either side.
 *
 * @param tool   A, B and C of the standard
 * @param soil   F of the soil for that tool, 0 < F ≤ 1 [ratio]
 * @param speed  ground speed [m/s], 0 to 15 km/h
 * @param width  working width [m], or number of tools, > 0
 * @param depth  working depth [m], above 0 to 60 cm
 * @returns draft [N], with its working, or a refusal outside the range in which such tools were measured
 * @see rule `draft.tool`: ASABE D497, clause 4
 */
export function draftOfTool(
  { a, b, c }: Tool, soil: number, speed: Quantity<'speed'>, width: number, depth: Quantity<'length'>,
): Working | Refusal {
  if (!(atLeast(speed, 0) && atMost(speed, fastest))) return { refused: 'the speed must lie from 0 to 15 km/h' };
  if (!(depth > 0 && atMost(depth, deepest))) return { refused: 'the depth must lie above 0 and up to 60 cm' };
  if (!(width > 0)) return { refused: 'the width, or the number of tools, must be above 0' };
  const kmPerHour = inUnit('speed', speed, 'km/h');
  return {
    formula: 'draft.tool',
    inputs: {
      soil: term('ratio', soil), a: term('ratio', a), b: term('ratio', b), c: term('ratio', c),
      speed: term('speed', speed), width: term('ratio', width), depth: term('length', depth),
    },
    result: term('force', soil * (a + b * kmPerHour + c * kmPerHour * kmPerHour) * width * inUnit('length', depth, 'cm')),
  };
}

/**
 * Draft of a tool by its width alone, as extension tables print it.
 *
 * @param width     working width [m], > 0
 * @param perWidth  draft for each metre of width [N/m], > 0
 * @returns draft [N], with its working
 * @see rule `draft.by-width`
 */
export function draftByWidth(width: Quantity<'length'>, perWidth: Quantity<'forcePerLength'>): Working {
  return {
    formula: 'draft.by-width',
    inputs: { width: term('length', width), draftPerWidth: term('forcePerLength', perWidth) },
    result: term('force', width * perWidth),
  };
}

/**
 * Draft of a plow by the section of soil it turns.
 *
 * @param width      width of cut of all bottoms [m], > 0
 * @param depth      depth of cut [m], > 0
 * @param unitDraft  resistance of the soil for each square metre of section [Pa], > 0
 * @returns draft [N], with its working
 * @see rule `draft.by-area`
 */
export function draftByArea(width: Quantity<'length'>, depth: Quantity<'length'>, unitDraft: Quantity<'pressure'>): Working {
  return {
    formula: 'draft.by-area',
    inputs: { width: term('length', width), depth: term('length', depth), unitDraft: term('pressure', unitDraft) },
    result: term('force', width * depth * unitDraft),
  };
}
