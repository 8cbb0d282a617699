/** All of the form by which a shortlist is mailed: fetched once a buyer wants it. */
export { mailFormTemplate } from './mail-form.ts';
export { Mailing } from './mailing.ts';
