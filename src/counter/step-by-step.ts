import type { AnswersDocument } from '../answers/schema.ts';
import type { AcreToAxle } from '../widget/element.ts';

/** What the wizard has been filled in with and not been told to go on with. */
const filled = 'input:checked, select';

const hasTyped = (form: Element) => [...form.querySelectorAll<HTMLInputElement>('input[type="text"]')].some(({ value }) => value.trim() !== '');

/** The same answers in the wizard: what staff entered goes in, what the customer answers comes out. */
export class StepByStep {
  private given: AnswersDocument | undefined;

  /** @param take  is handed the answers whenever the wizard has others */
  constructor(private readonly wizard: () => AcreToAxle | null, private readonly take: (answers: AnswersDocument) => void) {}

  /** Another customer: the wizard holds nothing of his. */
  forget() {
    this.given = undefined;
  }

  async give(answers: AnswersDocument) {
    const wizard = this.wizard();
    if (!wizard || this.given === answers) return;
    this.given = answers;
    await wizard.ready;
    if (this.given === answers && wizard.answers !== answers) wizard.answers = answers;
  }

  /** Something was done in it. */
  readonly heard = async () => {
    const wizard = this.wizard();
    if (!wizard) return;
    await wizard.updateComplete;
    const { answers } = wizard;
    if (this.given === undefined || answers === this.given || JSON.stringify(answers) === JSON.stringify(this.given)) return;
    this.given = answers;
    this.take(answers);
  };

  /** The sheet is wanted: what stands in the wizard's boxes is taken along, where it can be read. */
  async leave() {
    const form = this.wizard()?.shadowRoot?.querySelector<HTMLFormElement>('form[part="question"]');
    if (form && (form.querySelector(filled) !== null || hasTyped(form))) form.requestSubmit();
    await this.heard();
  }

  /** Shows the page of the result. */
  async showResult() {
    const wizard = this.wizard();
    await wizard?.ready;
    await wizard?.updateComplete;
    wizard?.shadowRoot?.querySelector<HTMLElement>('[part="see-result"], [part="check"] [part="continue"]')?.click();
  }
}
