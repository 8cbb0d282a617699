import { html, nothing } from 'lit';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import type { Answers } from '../answers/answers.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import { lineUp, type LineUpItem } from '../drawing/line-up.ts';
import { lineUpSvg } from '../drawing/svg.ts';
import type { LineUpWords } from '../drawing/words.ts';
import type { Need } from '../needs/need.ts';
import { sayBecause, type Voice } from '../reasons/say.ts';
import type { Because } from '../reasons/schema.ts';
import type { StandingSoFar } from '../reasons/standing-so-far.ts';
import type { RuleBook } from '../trade/book.ts';
import { showAmount } from '../units/show.ts';

export interface LineUpView {
  catalogue: Catalogue;
  answers: Answers;
  book: RuleBook;
  needs: readonly Need[];
  standing: StandingSoFar;
  voice: Voice;
  units: 'us' | 'metric';
  side: 'side' | 'rear';
  /** CSS pixels there are for it. */
  width: number;
  /** The machine whose standing is told under the picture. */
  pointed: string | undefined;
  turn(side: 'side' | 'rear'): void;
  point(machine: string): void;
}

type Told = Pick<LineUpView, 'standing' | 'voice'> & { needs: readonly Pick<Need, 'id' | 'task'>[] };

/** CSS pixels to the metre, so that two machines go side by side on a phone and all of a line-up on a screen. */
const atAGlance = 21;
/** CSS pixels from which there is room for figures too; on less they are told of the machine that is tapped. */
const withFigures = 480;

/** Ids within one shadow root need no more than this to be told apart. */
const prefix = 'line-up';

/** Why a machine doesn't stand, or what must be asked: the first of it. */
function becauseText(machine: string, { standing, needs, voice }: Told): string {
  const { because, outcome } = [
    ...standing.ruledOut.map((entry) => ({ ...entry, outcome: 'failed' as const })),
    ...standing.askDealer.map((entry) => ({ ...entry, outcome: 'unknown' as const })),
  ].find((entry) => entry.machine === machine) ?? { because: [] as Because[], outcome: 'failed' as const };
  const [first] = because;
  return first ? sayBecause(first, outcome, needs.find(({ id }) => id === first.need)?.task, { ...voice, machine }) : '';
}

/** What the picture shows of a machine: its sizes, and whether it goes with the buyer's own things. */
function itemText({ machine, width, height, over, length, withLoader, reach, fits }: LineUpItem, view: Told): string {
  const { words: { lineUp: words }, reader } = view.voice;
  const long = (metres: number) => showAmount(metres, 'm', reader);
  const sizes = [
    width !== undefined && words.sizes.width(long(width)),
    height !== undefined && words.sizes[over](long(height)),
    length !== undefined && words.sizes[withLoader ? 'withLoader' : 'length'](long(length)),
    reach !== undefined && words.sizes.reach(long(reach)),
  ].filter((size) => size !== false);
  return [
    sizes.length > 0 ? `${sizes.join(', ')}.` : '',
    ...fits.map(({ id, outcome }) => `${words.fits[id]}: ${words.outcomes[outcome]}.`),
    becauseText(machine, view),
  ].filter((part) => part !== '').join(' ');
}

/** What is said in the picture, and of each machine in it. */
export function lineUpWords(view: Told & { catalogue: Pick<Catalogue, 'machines'> }): LineUpWords {
  const { voice: { words: { lineUp: words }, reader, nameOf }, catalogue } = view;
  return {
    title: words.heading,
    description: words.description(catalogue.machines.length),
    length: (metres) => showAmount(metres, 'm', reader),
    bar: (metres) => showAmount(metres, 'm', reader),
    legend: words.legend,
    machine: (item) => ({
      name: nameOf(item.machine), description: itemText(item, view),
      ...(item.standing !== 'not-judged' && { standing: words.standing[item.standing] }),
    }),
    thing: (id) => ({ name: words.things[id], description: words.things[id] }),
  };
}

const within = ({ left, right, top, bottom }: DOMRect, { clientX, clientY }: MouseEvent) =>
  clientX >= left && clientX <= right && clientY >= top && clientY <= bottom;

/** The machine under a pointer or a finger, between its lines too, by the id of its part of the picture. */
function machineAt(event: MouseEvent) {
  const parts = [...(event.currentTarget as Element).querySelectorAll(`[id^="${prefix}-machine-"][role]`)];
  const part = parts.find((each) => each.contains(event.target as Node)) ?? parts.find((each) => within(each.getBoundingClientRect(), event));
  return part?.id.slice(`${prefix}-machine-`.length);
}

/** The machines to scale with the buyer's own things, what is told of one of them, and the same in words. */
export function lineUpTemplate(view: LineUpView) {
  const { voice: { words: { lineUp: words }, nameOf }, catalogue, answers, book, standing, side, width, units, pointed } = view;
  const drawn = lineUp({ catalogue, answers, book, shortlist: standing, view: side, layout: 'wrap', width, units, scaleAtMost: atAGlance, figures: width >= withFigures });
  const point = (event: MouseEvent) => {
    const machine = machineAt(event);
    if (machine !== undefined) view.point(machine);
  };
  const focused = ({ target }: Event) => {
    const { id } = (target as Element).closest(`[id^="${prefix}-machine-"][role]`) ?? { id: '' };
    if (id) view.point(id.slice(`${prefix}-machine-`.length));
  };
  const told = drawn.items.find(({ machine }) => machine === pointed);
  const line = (item: LineUpItem) => html`<strong>${nameOf(item.machine)}</strong>: ${words.standing[item.standing]}. ${itemText(item, view)}`;
  return html`
    <figure class="close line-up" part="line-up">
      <figcaption><h3>${words.heading}</h3></figcaption>
      <fieldset class="units">
        <legend>${words.view}</legend>
        ${(['side', 'rear'] as const).map((each) => html`
          <label><input type="radio" name="line-up-view" .checked=${side === each} @change=${() => view.turn(each)} />${words.views[each]}</label>`)}
      </fieldset>
      <div class="drawn" @click=${point} @pointerover=${point} @focusin=${focused}>${unsafeSVG(lineUpSvg(drawn, { words: lineUpWords(view), prefix }))}</div>
      <p class="pointed" aria-live="polite">${told ? line(told) : words.hint}</p>
      <details>
        <summary>${words.inWords}</summary>
        <ul class="plain">${drawn.items.map((item) => html`<li>${line(item)}</li>`)}</ul>
      </details>
    </figure>
  `;
}

/** On a narrow page the picture is one tap away. */
export const foldedLineUpTemplate = (view: LineUpView | undefined, { words }: Voice, open: boolean, toggle: (open: boolean) => void) => html`
  <details class="folded" .open=${open} @toggle=${(event: Event) => toggle((event.target as HTMLDetailsElement).open)}>
    <summary>${words.lineUp.show}</summary>
    ${open && view ? lineUpTemplate(view) : nothing}
  </details>
`;
