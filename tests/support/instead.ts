const undo: (() => void)[] = [];

/** Puts something in the place of what the browser has, until {@link putBack}. */
export function instead(of: object, name: string, value: unknown) {
  const before = Object.getOwnPropertyDescriptor(of, name);
  Object.defineProperty(of, name, { configurable: true, writable: true, value });
  undo.push(() => (before ? Object.defineProperty(of, name, before) : Reflect.deleteProperty(of, name)));
}

/** What else is to be undone then. */
export const afterwards = (act: () => void) => { undo.push(act); };

/** All that was put elsewhere goes back, the last first. */
export function putBack() {
  for (const each of undo.splice(0).reverse()) each();
}
