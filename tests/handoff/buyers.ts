import type { AnswersDocument } from '../../src/answers/schema.ts';
import { noAnswers } from '../../src/answers/names.ts';
import type { Field, QuestionId } from '../../src/answers/questions.ts';
import { questionOf } from '../../src/answers/questions.ts';
import { readTyped, type Typing } from '../../src/answers/read-typed.ts';
import { answered, type Values } from '../../src/guide/answered.ts';
import { nextQuestion, visitOf, type Visit } from '../../src/guide/next-question.ts';
import { notSure, scriptedBuyers, type ScriptedBuyer } from '../walks/scripted-buyers.ts';

type Said = ScriptedBuyer['answers'][string];

function valueOf(field: Field, said: Said | undefined, typing: Typing): unknown {
  if (said === undefined || said === notSure) return undefined;
  if (typeof said !== 'string') return [...said];
  if (field.control === 'yes-no') return said === 'yes';
  if (field.control === 'choice') return said;
  if (field.control === 'choice-or-quantity' && field.options.includes(said)) return said;
  const read = readTyped(field, said, typing);
  if ('fault' in read) throw new Error(`${field.at}: ${said} isn't understood`);
  return read.value;
}

function mindOf({ answers, units, lang }: ScriptedBuyer) {
  const typing: Typing = { units: units ?? 'us', decimalMark: lang === 'de' ? ',' : '.', currency: 'USD' };
  return (id: QuestionId): Values | undefined => {
    const { fields } = questionOf(id);
    if (!fields.some(({ at }) => answers[at] !== undefined)) return undefined;
    return Object.fromEntries(fields.map((field) => [field.at, valueOf(field, answers[field.at], typing)]));
  };
}

/** What a scripted buyer's document holds at the end of his visit: each question asked, as the widget asks it with nothing skipped. */
function documentOf(buyer: ScriptedBuyer): AnswersDocument {
  const mind = mindOf(buyer);
  let visit: Visit = visitOf(noAnswers);
  for (let at = nextQuestion(visit); at; at = nextQuestion(visit)) visit = answered(visit, at, mind(at));
  return visit.answers;
}

export const buyers = scriptedBuyers.map((buyer) => ({ name: buyer.name, answers: documentOf(buyer) }));
