/** Every choice of some things, none and all of them among these. */
export function choicesOf<T>([first, ...others]: readonly T[]): T[][] {
  if (first === undefined) return [[]];
  const without = choicesOf(others);
  return [...without, ...without.map((each) => [first, ...each])];
}
