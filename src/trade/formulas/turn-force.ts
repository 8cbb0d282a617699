import { term, type Working } from '../working.ts';

/**
 * How many times stronger a turn pulls outward when it is taken faster, the radius staying as it is.
 *
 * @param times  the faster speed in terms of the slower, > 0 [ratio]
 * @returns factor [ratio], with its working
 * @see rule `slope.turn-force`
 */
export function turnForce(times: number): Working {
  return { formula: 'slope.turn-force', inputs: { times: term('ratio', times) }, result: term('ratio', times * times) };
}
