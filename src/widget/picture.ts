import { html } from 'lit';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import { answersOf } from '../answers/answers.ts';
import type { QuestionId } from '../answers/questions.ts';
import type { AnswersDocument } from '../answers/schema.ts';
import { pictureOf } from '../drawing/pictures/picture-of.ts';
import { roundLength } from '../drawing/pictures/round-length.ts';
import type { Voice } from '../reasons/say.ts';
import type { RuleBook } from '../trade/book.ts';
import { showAmount } from '../units/show.ts';

export interface PictureView {
  question: QuestionId;
  /** With what stands in the boxes, so that a slope or a bale is drawn as it is typed. */
  answers: AnswersDocument;
  book: RuleBook;
  voice: Voice;
  /** CSS pixels there are for it. */
  width: number;
}

/** What a question asks, drawn. It is one that has a picture. */
export function pictureTemplate({ question, answers, book, voice, width }: PictureView) {
  const { words, reader } = voice;
  const picture = pictureOf(question, {
    answers: answersOf(answers), book, units: reader.units, words: words.pictures, prefix: 'picture', width, direction: words.direction,
    length: (metres) => roundLength(metres, reader), mass: (kg) => showAmount(kg, 'kg', reader),
  })!;
  return html`<figure class="close picture" part="picture"><figcaption class="hint">${picture.title}</figcaption>${unsafeSVG(picture.svg)}</figure>`;
}
