import { folded } from '../units/folded.ts';

/** An id in small letters and hyphens, from a name. */
export const idOf = (name: string, otherwise = 'my-lot') =>
  folded(name).replaceAll(/[^a-z0-9]+/g, '-').replaceAll(/^-|-$/g, '') || otherwise;

/** An id for each of some texts, no two alike: the second of a name has a 2 behind it. Nothing stays nothing. */
export function idsFrom(texts: readonly string[]): string[] {
  const taken = new Set<string>();
  return texts.map((text) => {
    const id = idOf(text, '');
    let free = id;
    for (let number = 2; taken.has(free); number += 1) free = `${id}-${number}`;
    if (id !== '') taken.add(free);
    return free;
  });
}
