import type { Quantity } from '../../units/quantity.ts';
import { term, type Refusal, type Working } from '../working.ts';

/**
 * Volume of the heap above the strike plane of a loader bucket, with slopes of 2:1 on all four sides:
 * V = W·b²/8 − b³/24. What lies below the plane comes on top of it.
 *
 * @param width    inside width of the bucket [m], > 0
 * @param opening  from cutting edge to the top of the back [m], 0 < opening ≤ width
 * @returns volume [m³], with its working, or a refusal where such a heap has no ridge
 * @see rule `bucket.heap`: SAE J742 and ISO 7546 take the slope; the volume follows by geometry
 */
export function heapVolume(width: Quantity<'length'>, opening: Quantity<'length'>): Working | Refusal {
  if (!(opening > 0 && opening <= width)) return { refused: 'the opening must be above 0 and no longer than the bucket is wide' };
  return {
    formula: 'bucket.heap',
    inputs: { width: term('length', width), opening: term('length', opening) },
    result: term('volume', (width * opening * opening) / 8 - (opening * opening * opening) / 24),
  };
}
