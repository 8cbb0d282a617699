/**
 * What the page does beyond being read: it hides the rules that don't have all the words typed, or aren't
 * of the kind and trust chosen, and lets the keyboard move a sum that is wider than the page. This function is printed into the page by its source text, so it uses
 * nothing from outside itself, and gets its words from the page.
 */
export function pageScript() {
  const form = document.querySelector('form')!;
  const [words, kind, trust] = form.querySelectorAll<HTMLInputElement | HTMLSelectElement>('input, select');
  const status = form.querySelector('[role="status"]')! as HTMLElement;
  // In capitals ß is SS, however it was typed; an apostrophe is typed straight.
  const plain = (text: string) => text.normalize('NFKD').replace(/\p{M}/gu, '').replaceAll('’', "'").toUpperCase();
  const rules = [...document.querySelectorAll<HTMLElement>('article')].map((element) => ({
    element,
    text: plain([...element.querySelectorAll('[data-searched]')].map((each) => each.textContent).join(' ')),
  }));
  const themes = [...document.querySelectorAll<HTMLElement>('main > section')].map((element) => ({
    element,
    link: document.querySelector<HTMLElement>(`nav a[href="#${element.id}"]`)!.parentElement!,
  }));

  function reachWideSums() {
    for (const sum of document.querySelectorAll<HTMLElement>('.sum')) {
      if (sum.scrollWidth > sum.clientWidth) sum.tabIndex = 0;
      else sum.removeAttribute('tabindex');
    }
  }

  function show() {
    const wanted = plain(words!.value).split(/\s+/).filter((word) => word !== '');
    let shown = 0;
    for (const { element, text } of rules) {
      element.hidden = !(
        wanted.every((word) => text.includes(word))
        && (kind!.value === '' || element.dataset.kind === kind!.value)
        && (trust!.value === '' || element.dataset.trust === trust!.value)
      );
      if (!element.hidden) shown += 1;
    }
    for (const { element, link } of themes) {
      element.hidden = element.querySelector('article:not([hidden])') === null;
      link.hidden = element.hidden;
    }
    reachWideSums();
    const { found, none } = status.dataset;
    status.textContent = shown === 0 ? none! : found!.replace('{shown}', String(shown)).replace('{all}', String(rules.length));
  }

  /** A link to a rule leads to it whatever was searched for. */
  function showTarget() {
    const target = document.getElementById(decodeURIComponent(location.hash.slice(1)));
    if (!target?.closest('[hidden]')) return;
    form.reset();
    show();
    target.scrollIntoView();
  }

  form.addEventListener('input', show);
  form.addEventListener('submit', (event) => event.preventDefault());
  // Told before the fields are emptied.
  form.addEventListener('reset', () => setTimeout(show));
  addEventListener('hashchange', showTarget);
  addEventListener('resize', reachWideSums);
  form.hidden = false;
  reachWideSums();
  // A browser that goes back fills the fields in again.
  if (words!.value + kind!.value + trust!.value !== '') show();
}
