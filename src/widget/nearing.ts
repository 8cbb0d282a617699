/** How near to what is seen an element comes before anything is fetched for it. */
const margin = '600px';

/** Longest wait where the browser can't tell what is seen [ms]. */
const longestWait = 2_000;

/** Tells when an element is nearly seen or has the focus: until then a page pays nothing for it. */
export class Nearing {
  /** Resolves then, and stays so. */
  readonly near: Promise<void>;
  private readonly element: HTMLElement;
  private come!: () => void;
  private watch: IntersectionObserver | undefined;

  constructor(element: HTMLElement) {
    this.element = element;
    this.near = new Promise((come) => { this.come = come; });
    element.addEventListener('focusin', this.now);
  }

  start(atOnce: boolean) {
    if (atOnce) return this.now();
    if (typeof IntersectionObserver === 'undefined') {
      setTimeout(this.now, longestWait);
      return;
    }
    this.watch = new IntersectionObserver((seen) => { if (seen.some(({ isIntersecting }) => isIntersecting)) this.now(); }, { rootMargin: margin });
    this.watch.observe(this.element);
  }

  readonly now = () => {
    this.come();
    this.stop();
  };

  stop() {
    this.watch?.disconnect();
    this.watch = undefined;
  }
}
