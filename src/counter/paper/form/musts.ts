import { questions, type Field, type Question } from '../../../answers/questions.ts';
import { everyOption } from './conditions.ts';

type Several = Extract<Field, { control: 'several' }>;

const isMust = (field: Field): field is Several => field.control === 'several' && field.at.endsWith('.must');
const about = ({ at }: Several) => at.slice(0, -'.must'.length);

/** The fields that say which of what was wished for is a must, with all they can name. */
const musts = (questions as readonly Question[]).flatMap(({ fields }) => fields).filter(isMust).map((field) => ({ field, about: about(field), options: everyOption(field) }));

/** Whether a field's option can be a must: it then has a second box on paper. */
export const canBeMust = ({ at, control }: Field, option: string) => control === 'several'
  && musts.some((must) => (at === must.about || at.startsWith(`${must.about}.`)) && at !== must.field.at && must.options.includes(option));

/** Whether all of a field can be a must, whatever is chosen of it. */
export const canBeMustWhole = ({ at, control }: Field) => control !== 'several' && musts.some((must) => must.options.some((option) => at === `${must.about}.${option}`));

const wishedFor = (questions as readonly Question[]).flatMap(({ fields }) => fields);

/** Whether all that a field can say is said by the second boxes of others. */
export const isSaidBySecondBoxes = (field: Field) => musts.some((must) => must.field === field && must.options.every((option) =>
  wishedFor.some((each) => each !== field && (canBeMust(each, option) ? everyOption(each as Several).includes(option) : canBeMustWhole(each) && each.at === `${must.about}.${option}`))));
