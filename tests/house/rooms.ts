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
  widget: [...core, 'guide', 'handoff'],
  counter: [...core, 'guide', 'handoff', 'widget'],
  relay: [...core, 'handoff'],
  cli: [...core, 'sheets', 'guide', 'handoff'],
  embed: [...core, 'guide', 'handoff', 'widget'],
  setup: [...core, 'sheets', 'guide', 'handoff', 'widget', 'embed'],
  release: [...core, 'sheets', 'guide', 'handoff', 'widget', 'cli', 'embed'],
};
