import { isServer } from 'lit';
import { AcreToAxle } from './element.ts';

/** Registers the element once; a second copy on the page leaves the first in place, and says so where it is another version. */
function register() {
  const first = customElements.get('acre-to-axle') as Partial<typeof AcreToAxle> | undefined;
  if (!first) customElements.define('acre-to-axle', AcreToAxle);
  else if (first.version !== AcreToAxle.version) {
    console.warn(`acre-to-axle: version ${AcreToAxle.version} was loaded where version ${first.version ?? 'unknown'} is at work already; the page keeps ${first.version ?? 'that one'}. Load one of the two.`);
  }
}

// A page made on a server has no use for an element that only a browser can run.
if (!isServer) register();

export { AcreToAxle };
export type { AcreEventDetails, AcreEvents } from './events.ts';
