import { html, nothing } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import { print, printBlank, send } from './handing-on.ts';
import type { Intake } from './intake.ts';
import { openingTemplate } from './opening/view.ts';
import type { Parts } from './parts.ts';
import type { Serving } from './serving.ts';
import { draftTemplate } from './view-of-draft.ts';
import { intakeTemplate } from './view-of-intake.ts';
import { parkedTemplate } from './view-of-parking.ts';
import { sendingTemplate } from './view-of-sending.ts';
import { sheetTemplate } from './view-of-sheet.ts';
import { coverTemplate, startTemplate } from './view-of-start.ts';
import { takingTemplate } from './view-of-taking.ts';
import { waitingTemplate } from './view-of-waiting.ts';

/** What it is drawn of, and who does what is pressed. */
export interface StageView {
  parts: Parts;
  serving: Serving;
  /** Looks again for what keeps the counter from working. */
  load(): void;
}

function askingTemplate(intake: Intake, { parts }: StageView) {
  const { equipment, customer, steps, screen } = parts;
  const { spoken, settings, stock, language } = equipment;
  const sheet = () => sheetTemplate({
    own: spoken!.own, answers: intake.answers, boxes: intake.boxes, faults: intake.faults, voice: parts.voiceFor(intake), typing: equipment.typing(intake.units), key: intake.key,
    change: (question, at, box) => customer.enter(question, at, box), left: (field) => customer.left(field),
  });
  const wizard = () => html`<acre-to-axle loading="eager" ?hidden=${intake.way === 'sheet'} .catalogue=${stock!.document} lang=${language} .units=${intake.units} .linkPage=${settings!.page} .languages=${language}
    @acre-answered=${steps.heard} @acre-result-shown=${steps.heard} @click=${steps.heard}></acre-to-axle>`;
  if (intake.way === 'steps') screen.askedInSteps = intake.key;
  return html`${intake.way === 'sheet' ? sheet() : nothing}${screen.askedInSteps === intake.key ? wizard() : nothing}`;
}

function contentTemplate(intake: Intake, view: StageView) {
  const { parts, serving } = view;
  const { equipment: { spoken, stock, settings, language }, customer: { part }, reckoning: { outcome }, outbox, sending, screen, thanks } = parts;
  if (part === 'ask') return askingTemplate(intake, view);
  if (part === 'take') {
    return takingTemplate({
      spoken: spoken!, voice: parts.voiceFor(intake), answers: intake.answers, catalogue: stock!.document, shortlist: outcome?.isWhole ? outcome.shortlist : undefined,
      page: settings!.page, said: screen.said, print: () => void print(parts), mailSaved: () => screen.set({ said: 'mail' }),
    });
  }
  if (!outbox.queue) return html`<p>${spoken!.own.send.noRelay}</p>`;
  return sendingTemplate({
    sending, own: spoken!.own, dealer: stock!.document.dealer.name, key: intake.key, language,
    speak: (tag) => void serving.speak(tag), send: () => void send(parts), again: () => void sending.again((waiting) => outbox.queue!.putSealed(waiting)), isClearing: thanks.isFollowing, left: thanks.left,
  });
}

/** How many stand, and which is first. */
function briefOf({ equipment: { stock, spoken }, reckoning: { outcome } }: Parts): string {
  if (!outcome || !stock) return spoken!.own.outcome.reckoning;
  const { shortlist: standing } = outcome.standing;
  const first = stock.document.machines.find(({ id }) => id === standing[0]?.machine);
  return `${spoken!.words.wizard.standing(standing.length, stock.document.machines.length)}${first ? ` · ${first.name}` : ''}`;
}

function customerTemplate(intake: Intake, view: StageView) {
  const { parts, serving } = view;
  const { equipment: { spoken, stock, settings }, customer, side, reckoning, parking, screen, isSent } = parts;
  const isBeside = !isSent && (customer.part !== 'ask' || intake.way === 'sheet');
  const beside = isBeside ? side.template({ stock: stock!, outcome: reckoning.outcome, voice: parts.voiceFor(intake), own: spoken!.own, paper: settings!.paper, whole: () => void serving.showWhole() }) : nothing;
  return keyed(intake.key, intakeTemplate({
    spoken: spoken!, intake, part: customer.part, isSent, note: isSent ? undefined : screen.note, trouble: parking.trouble, content: contentTemplate(intake, view), beside, brief: briefOf(parts),
    say: (said) => customer.say(said), ask: (way) => void serving.ask(way), show: (part) => void serving.show(part), measure: (units) => customer.measure(units),
    park: () => void serving.park(), next: () => void serving.done(),
  }));
}

function betweenTemplate({ parts, serving }: StageView) {
  const { equipment, parking, draft, screen, time } = parts;
  const { spoken, stock, locale, isAccepted } = equipment;
  const { own } = spoken!;
  return startTemplate({
    own, stock: stock!, locale, isAccepted,
    draft: draftTemplate({ left: draft.left, isGone: screen.isDraftGone, own, locale, take: () => void parking.guarded(() => void serving.bringBack()) }),
    parked: parkedTemplate({ parking, own, locale, now: time.now(), openId: undefined, resume: (id) => void serving.resume(id) }),
    accept: () => {
      equipment.accept();
      screen.set({ focusNext: '[data-begin]' });
    },
    begin: () => serving.begin(), open: () => screen.set({ place: 'opening', focusNext: '#opening-field' }), cover: () => serving.coverScreen(), printForm: () => printBlank(parts),
  });
}

/** What is on show: what keeps the counter from working, nobody, a customer, or something staff look after. */
export function stageTemplate(view: StageView) {
  const { parts, serving, load } = view;
  const { equipment: { spoken, stock, missing }, customer: { intake }, outbox, opening, parking, screen, time } = parts;
  const { own } = spoken!;
  if (missing) return html`<p role="alert">${own.trouble[missing]}</p><div class="actions"><button class="main" type="button" data-try-again @click=${load}>${own.trouble.tryAgain}</button></div>`;
  if (!stock) return html`<p role="status">${own.loading}</p>`;
  if (screen.covered) return coverTemplate(own, screen.covered, () => void parking.guarded(() => serving.showStart()));
  const back = () => {
    opening.close();
    screen.set({ place: 'work' });
  };
  if (screen.place === 'waiting') return waitingTemplate({ outbox, own, now: time.now(), back });
  if (screen.place === 'opening') return html`${openingTemplate({ opening, words: spoken!.opening })}<div class="actions"><button type="button" data-back @click=${back}>${own.waiting.back}</button></div>`;
  return intake ? customerTemplate(intake, view) : betweenTemplate(view);
}
