import { html, nothing } from 'lit';
import { questions } from '../../../answers/questions.ts';
import type { AnswersDocument } from '../../../answers/schema.ts';
import { beforeSaid, saidOf } from '../../../widget/say-answer.ts';
import type { Part } from '../paper.ts';
import type { Extent } from './extent.ts';
import type { SheetView } from './view.ts';

/** The answers read back in words, in the order of the questions. */
export function answersPart(answers: AnswersDocument, { answers: told }: Extent, { voice }: SheetView): Part {
  const { words } = voice;
  const said = questions.map(({ id, fields }) => ({ id, fields, said: saidOf(id, answers, voice) })).filter((each) => each.said.length > 0);
  // A field that is alone in its question has its label in the question itself, unless that isn't told.
  const labelOf = (id: keyof typeof words.questions, at: string) => words.questions[id].fields[at]?.label;
  const line = ({ id, fields, said: all }: (typeof said)[number]) => all.map(({ label, text }, index) => {
    const before = label ?? (told === 'labels' ? labelOf(id, fields[0].at) : undefined);
    return html`${index > 0 ? words.joins.semicolon : nothing}${before ? html`<span class="label">${beforeSaid(before, voice)}</span>` : nothing}${text}`;
  });
  return {
    id: 'answers',
    body: html`
      <h2>${words.result.answersHeading}</h2>
      <div class=${told === 'questions' ? 'answers' : 'answers narrow'}>
        ${said.map((each) => html`<p>${told === 'questions' ? html`<strong>${words.questions[each.id].ask}</strong> ` : nothing}${line(each)}</p>`)}
        ${said.length === 0 ? html`<p>${words.result.notSaid}</p>` : nothing}
      </div>`,
  };
}
