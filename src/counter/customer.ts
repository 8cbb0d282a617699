import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { questionOf, type Field, type QuestionId } from '../answers/questions.ts';
import type { Typing } from '../answers/read-typed.ts';
import type { AnswersDocument } from '../answers/schema.ts';
import type { Box } from '../widget/box.ts';
import { boxesFor, entered, retyped } from './entry.ts';
import { newIntake, withFaultOf, withFaultsMended, type Intake, type ParkedIntake, type Way } from './intake.ts';

/** What of an intake is on show. */
export type Part = 'ask' | 'send' | 'take';

/** The customer on the screen, and what is done with him. */
export class Customer implements ReactiveController {
  intake: Intake | undefined;
  part: Part = 'ask';

  /** @param typing  in what units and marks the counter reads what is typed */
  constructor(private readonly host: ReactiveControllerHost, private readonly typing: (units?: 'us' | 'metric') => Typing) {
    host.addController(this);
  }

  hostConnected() {}

  begin(from: Partial<ParkedIntake> = {}) {
    this.part = 'ask';
    this.put(newIntake(this.typing(from.units), from));
  }

  /** Nothing of him is left in the page. */
  leave() {
    this.intake = undefined;
    this.part = 'ask';
    this.host.requestUpdate();
  }

  enter(question: QuestionId, at: string, box: Box) {
    const { intake } = this;
    if (!intake) return;
    const typing = this.typing(intake.units);
    const field = (questionOf(question).fields as readonly Field[]).find((each) => each.at === at)!;
    this.put(withFaultsMended({ ...intake, ...entered(intake, question, at, box, typing) }, field, typing));
  }

  left(field: Field) {
    const { intake } = this;
    if (intake) this.put(withFaultOf(intake, field, this.typing(intake.units)));
  }

  /** Answers that came from elsewhere: from the wizard, a phone, a link. */
  answer(answers: AnswersDocument) {
    const { intake } = this;
    if (intake) this.put({ ...intake, answers, boxes: boxesFor(answers, this.typing(intake.units)), faults: new Map() });
  }

  say(said: Partial<Pick<Intake, 'name' | 'notes'>>) {
    if (this.intake) this.put({ ...this.intake, ...said });
  }

  ask(way: Way) {
    if (this.intake) this.put({ ...this.intake, way });
  }

  /** In other units; what can't be read stays as it was typed. */
  measure(units: 'us' | 'metric') {
    const { intake } = this;
    if (!intake || units === intake.units) return;
    this.put({ ...intake, units, ...retyped(intake, this.typing(intake.units), this.typing(units)) });
  }

  /** The language changed, and with it how numbers are written. */
  reread(before: Typing) {
    const { intake } = this;
    if (intake) this.put({ ...intake, ...retyped(intake, { ...before, units: intake.units }, this.typing(intake.units)) });
  }

  show(part: Part) {
    this.part = part;
    this.host.requestUpdate();
  }

  private put(intake: Intake) {
    this.intake = intake;
    this.host.requestUpdate();
  }
}
