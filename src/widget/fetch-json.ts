/** Why there is nothing to reckon with; what is missing may come later, `faulty` wants the dealer. The details are for whoever embeds. */
export type CatalogueTrouble = { code: 'catalogue.missing' | 'catalogue.faulty' | 'script.missing'; details: string[] };

/** Fetches a document from where the page says it is. */
export async function fetchJson(address: string, signal: AbortSignal): Promise<{ json: unknown } | CatalogueTrouble> {
  try {
    const answer = await fetch(address, { signal, credentials: 'omit' });
    if (!answer.ok) return { code: 'catalogue.missing', details: [`${address}: ${answer.status}`] };
    return { json: await answer.json() as unknown };
  } catch (trouble) {
    return { code: 'catalogue.missing', details: [`${address}: ${String(trouble)}`] };
  }
}

export const isTrouble = (outcome: object): outcome is CatalogueTrouble => 'code' in outcome;
