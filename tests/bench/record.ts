/** Runs in the page, before anything of it: notes when a heading was there and when it was painted. */

export interface Watched {
  /** The element that holds it all, by its own shadow root where it has one. */
  host: string;
  heading: string;
  /** Boxes to tick of the first question; it counts once all of them are there. */
  boxes: number;
}

/** Times [ms]: of the first question from the start of the navigation, of a step from the click that led there. */
export interface Moment {
  heading: string;
  inDom: number;
  painted: number;
}

export interface Recorded {
  first: Moment | undefined;
  steps: Moment[];
}

declare global {
  interface Window {
    recorded: Recorded;
  }
}

export function record({ host, heading, boxes }: Watched) {
  const recorded: Recorded = { first: undefined, steps: [] };
  window.recorded = recorded;
  let shown: string | undefined;
  let clicked = 0;

  /** A task that is put off in a frame runs once that frame has been drawn; this one before all others that wait. */
  const oncePainted = (then: () => void) => requestAnimationFrame(() => { void scheduler.postTask(then, { priority: 'user-blocking' }); });

  const look = () => {
    const element = document.querySelector(host);
    const root = element?.shadowRoot ?? element;
    const text = root?.querySelector(heading)?.textContent?.trim();
    if (!root || !text || text === shown) return;
    const first = shown === undefined;
    if (first && root.querySelectorAll('input[type="checkbox"]').length < boxes) return;
    shown = text;
    const from = first ? 0 : clicked;
    const inDom = performance.now() - from;
    oncePainted(() => {
      const moment = { heading: text, inDom, painted: performance.now() - from };
      if (first) recorded.first = moment;
      else recorded.steps.push(moment);
    });
  };

  // Called as soon as the code that changed the page gives way, so before anything is painted.
  const observer = new MutationObserver(look);
  const all = { childList: true, characterData: true, subtree: true };
  observer.observe(document, all);
  const attach = Element.prototype.attachShadow;
  Element.prototype.attachShadow = function attachShadow(init) {
    const root = attach.call(this, init);
    observer.observe(root, all);
    return root;
  };
  document.addEventListener('click', () => { clicked = performance.now(); }, { capture: true });
}
