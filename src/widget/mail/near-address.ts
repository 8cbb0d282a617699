/** Endings that no address has and fingers type: what each was meant to be. */
const meant: Record<string, string> = {
  con: 'com', cmo: 'com', ocm: 'com', comm: 'com', vom: 'com', xom: 'com', 'co,': 'com',
  ner: 'net', nte: 'net', ent: 'net', neet: 'net', ogr: 'org', rog: 'org', orgg: 'org',
};

/** The address that was likely meant, or undefined where nothing speaks against the one typed. */
export function nearAddress(address: string): string | undefined {
  const at = address.lastIndexOf('.');
  const better = meant[address.slice(at + 1).toLowerCase()];
  return better && `${address.slice(0, at)}.${better}`;
}
