import type { Place } from '../guide/guide.ts';

interface Mark {
  place: Place;
  /** How many of our own entries lie before this one. */
  depth: number;
}

/**
 * The browser's own Back and Forward, where the host allows it: each place of a visit is an entry of the
 * page's history. The address stays as it is, and so does what the host keeps in its entries.
 */
export class Trail {
  private places: Place[] = [];
  private depth = 0;

  /**
   * @param key  what our mark is called in an entry, one a wizard
   * @param revisit  is told the place of the entry that was come to
   */
  constructor(private readonly key: string, private readonly revisit: (place: Place) => void) {}

  start() {
    window.addEventListener('popstate', this.popped);
  }

  stop() {
    window.removeEventListener('popstate', this.popped);
  }

  /** A place was left for another by what the buyer did on the page. */
  moved(from: Place, to: Place) {
    if (this.places.length === 0) {
      this.places = [from];
      history.replaceState(this.marked({ place: from, depth: 0 }), '');
    }
    this.depth += 1;
    this.places = [...this.places.slice(0, this.depth), to];
    history.pushState(this.marked({ place: to, depth: this.depth }), '');
  }

  /** Whether the entry before is that place: then the browser goes there, so that its Back doesn't lead forward again. */
  wentBackTo(place: Place): boolean {
    if (this.depth === 0 || this.places[this.depth - 1] !== place) return false;
    history.back();
    return true;
  }

  private marked(mark: Mark) {
    return { ...(history.state as object | null), [this.key]: mark };
  }

  private readonly popped = ({ state }: PopStateEvent) => {
    const mark = (state as Record<string, Mark | undefined> | null)?.[this.key];
    if (!mark || this.places.length === 0) return;
    this.depth = mark.depth;
    this.revisit(mark.place);
  };
}
