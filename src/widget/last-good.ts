/**
 * The last catalogue that could be used, kept in the browser where the page asks for it. What can't be kept
 * isn't: storage that is full, shut off or not there is no fault of the page.
 */
export const store = 'acre-to-axle';

/** @param address  where the catalogue came from, whole */
export async function keepCatalogue(address: string, text: string): Promise<void> {
  try {
    await (await caches.open(store)).put(address, new Response(text));
  } catch {
    // Nothing is lost but the copy.
  }
}

/** Undefined where none was kept, or it can't be read. */
export async function keptCatalogue(address: string): Promise<string | undefined> {
  try {
    return await (await (await caches.open(store)).match(address))?.text();
  } catch {
    return undefined;
  }
}
