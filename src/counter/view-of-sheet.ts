import { html, nothing } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { questionOf, type Field, type QuestionId } from '../answers/questions.ts';
import { goToFirst, goToNext } from './keys.ts';
import { sectionsOf, type Section } from './sections.ts';
import { fieldTemplate, type FieldView } from './view-of-field.ts';
import type { CounterWords } from './words/words.ts';

export interface SheetView extends FieldView {
  own: CounterWords;
}

export function goToSection(root: ParentNode, number: number) {
  const section = root.querySelector(`[data-section="${number}"]`);
  section?.scrollIntoView({ block: 'start' });
  if (section) goToFirst(section);
}

export const goToStart = (root: ParentNode) => {
  const questions = root.querySelector('.questions');
  if (questions) goToFirst(questions);
};

function questionTemplate(id: QuestionId, view: SheetView) {
  const question = questionOf(id);
  const fields = question.fields as readonly Field[];
  const heading = fields.length > 1 ? html`<h3>${view.voice.words.questions[id].ask}</h3>` : nothing;
  return html`<div class="asked" data-question=${id}>${heading}<div class="boxes">${fields.map((field) => fieldTemplate(field, question, view))}</div></div>`;
}

function sectionTemplate({ id, questions }: Section, number: number, view: SheetView) {
  const { own } = view;
  return html`
    <section class="topic" data-section=${number} aria-labelledby="section-${id}" ?hidden=${questions.length === 0}>
      <h2 id="section-${id}"><span>${own.sections[id]}</span> <kbd>${own.shortcut(String(number))}</kbd></h2>
      ${repeat(questions, (each) => each, (each) => questionTemplate(each, view))}
    </section>`;
}

/** All questions that apply on one sheet, in the order of the wizard, for hands that know it. */
export function sheetTemplate(view: SheetView) {
  const { own, answers } = view;
  const sections = sectionsOf(answers);
  const go = (number: number) => ({ currentTarget }: Event) => goToSection((currentTarget as Element).getRootNode() as ShadowRoot, number);
  const byKey = (event: KeyboardEvent) => {
    const target = event.target as HTMLElement;
    if (event.key !== 'Enter' || !target.matches('input, select')) return;
    event.preventDefault();
    // Enter takes what is typed, as leaving the field does.
    if (target.matches('[type="text"]')) target.dispatchEvent(new Event('change'));
    goToNext(event.currentTarget as ParentNode, target, event.shiftKey);
  };
  return html`
    <form class="questions" novalidate autocomplete="off" @submit=${(event: Event) => event.preventDefault()} @keydown=${byKey}>
      <nav aria-label=${own.sectionsLabel}><ol class="topics">${sections.map(({ id, questions }, index) => (questions.length === 0 ? nothing : html`
        <li><button class="text" type="button" @click=${go(index + 1)}>${own.sections[id]} <kbd aria-hidden="true">${index + 1}</kbd></button></li>`))}</ol></nav>
      <p class="hint keys">${own.intake.keysHint}</p>
      ${sections.map((section, index) => sectionTemplate(section, index + 1, view))}
    </form>`;
}
