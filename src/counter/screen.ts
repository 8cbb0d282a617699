import type { ReactiveControllerHost } from 'lit';
import { coveredBefore, type Covered } from './residue.ts';

/** What is on show; an intake lies under the list of what waits, and is shown again after it. */
export type Place = 'work' | 'opening' | 'waiting';

/** What is said and shown of the work itself, apart from what the controllers hold. */
export interface Shown {
  place: Place;
  /** Of what was to be printed or taken along. */
  said: 'printed' | 'not-fits' | 'mail' | undefined;
  /** Something to be said of the customer on the screen. */
  note: string | undefined;
  covered: Covered | undefined;
  isUpdateAsked: boolean;
  /** What a page that went away had left was asked for, and isn't there any more. */
  isDraftGone: boolean;
  /** Where the customer on the screen was parked before. */
  parkedAs: string | undefined;
  /** What is to have the focus once the page has been drawn. */
  focusNext: string | undefined;
}

export class Screen implements Shown {
  place: Place = 'work';
  said: Shown['said'];
  note: string | undefined;
  covered: Covered | undefined = coveredBefore();
  isUpdateAsked = false;
  isDraftGone = false;
  parkedAs: string | undefined;
  focusNext: string | undefined;
  /** The customer who was asked step by step: the wizard stays, out of sight, with what stands in its boxes. */
  askedInSteps: string | undefined;

  constructor(private readonly host: Pick<ReactiveControllerHost, 'requestUpdate'>) {}

  set(changed: Partial<Shown>) {
    Object.assign(this, changed);
    this.host.requestUpdate();
  }
}
