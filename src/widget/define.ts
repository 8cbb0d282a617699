import { AcreToAxle } from './element.ts';

/** Registers the element once; a second copy on the page leaves the first in place. */
if (!customElements.get('acre-to-axle')) customElements.define('acre-to-axle', AcreToAxle);

export { AcreToAxle };
export type { AcreEventDetails, AcreEvents } from './events.ts';
