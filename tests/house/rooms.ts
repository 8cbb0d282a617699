const upToNeeds = ['units', 'documents', 'trade', 'catalogue', 'answers', 'needs'];
const core = [...upToNeeds, 'ranking', 'reasons', 'drawing'];

/** Which room may import which: the only directions there are. */
export const mayImport: Record<string, readonly string[]> = {
  units: [],
  documents: ['units'],
  trade: ['units'],
  catalogue: ['units', 'documents', 'trade'],
  answers: ['units', 'documents', 'catalogue'],
  sheets: ['units', 'documents', 'trade', 'catalogue'],
  needs: ['units', 'trade', 'catalogue', 'answers'],
  ranking: upToNeeds,
  reasons: [...upToNeeds, 'ranking'],
  drawing: [...upToNeeds, 'ranking', 'reasons'],
  guide: core,
  handoff: core,
  request: ['units', 'documents', 'trade', 'catalogue', 'answers'],
  lot: core,
  demand: core,
  widget: [...core, 'guide', 'handoff', 'request', 'lot'],
  counter: [...core, 'guide', 'handoff', 'request', 'lot', 'widget'],
  relay: [...core, 'sheets', 'handoff', 'request', 'lot', 'demand'],
  cli: [...core, 'sheets', 'guide', 'handoff', 'request', 'lot', 'demand', 'relay'],
  embed: [...core, 'guide', 'handoff', 'request', 'lot', 'widget'],
  setup: [...core, 'sheets', 'guide', 'handoff', 'request', 'lot', 'demand', 'widget', 'embed'],
  release: [...core, 'sheets', 'guide', 'handoff', 'request', 'lot', 'demand', 'widget', 'relay', 'cli', 'embed'],
};
