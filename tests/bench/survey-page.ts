/** A general survey library that asks the same questions from a document of its own format. */
import { Model } from 'survey-core';
import 'survey-js-ui';

declare const surveyForm: object;

declare global {
  interface Window {
    /** The bench fills its boxes, which isn't measured; Continue is a click like everywhere. */
    survey: Model;
  }
}

window.survey = new Model(surveyForm);
window.survey.render(document.querySelector<HTMLElement>('#survey')!);
