/**
 * The rooms that are mutated, each with the folders whose tests are to notice, but for those that read the
 * records as text or go by way of a whole shortlist: they would take many times as long.
 */
export const rooms = {
  units: { folders: ['units', 'worked'], without: [] },
  trade: { folders: ['trade', 'worked'], without: ['figures', 'overrides'] },
  needs: { folders: ['needs'], without: ['needs-of', 'not-cleared'] },
};

/** Share of the mutants of a room that must be noticed. */
export const asked = 0.85;
