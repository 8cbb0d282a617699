/** What stands in a form for a request, whoever shows it: what is wrong in it, and the request it comes to. */
import { isAddress } from '../documents/mail-address.ts';
import { requestFormat, type GoodTime, type RequestKind } from './names.ts';
import type { RequestDocument } from './schema.ts';
import { isName, isPhone } from './typed.ts';

export interface RequestFields {
  address: string;
  dealerCopy: boolean;
  statistics: boolean;
  /** For the dealer's copy alone. */
  name: string;
  phone: string;
  goodTime: GoodTime;
}

export const blankFields: RequestFields = { address: '', dealerCopy: false, statistics: false, name: '', phone: '', goodTime: 'any' };

/** What the request says besides what is typed: all of it from closed lists. */
export type RequestFrame = Pick<RequestDocument, 'dealer' | 'answers' | 'language' | 'units' | 'seen'>;

export type FieldFault = 'address-missing' | 'address-wrong' | 'name' | 'phone';

/** What is wrong with what is typed, in the order of the form. */
export function faultsOf({ address, dealerCopy, name, phone }: Pick<RequestFields, 'address' | 'dealerCopy' | 'name' | 'phone'>): FieldFault[] {
  const [to, called, number] = [address.trim(), name.trim(), phone.trim()];
  return [
    ...(to === '' ? ['address-missing' as const] : isAddress(to) ? [] : ['address-wrong' as const]),
    ...(dealerCopy && called !== '' && !isName(called) ? ['name' as const] : []),
    ...(dealerCopy && number !== '' && !isPhone(number) ? ['phone' as const] : []),
  ];
}

/** Contact data go with the dealer's copy alone. */
function contactOf({ dealerCopy, name, phone, goodTime }: RequestFields): Pick<RequestDocument, 'contact'> {
  const contact = { ...(name.trim() && { name: name.trim() }), ...(phone.trim() && { phone: phone.trim(), goodTime }) };
  return dealerCopy && Object.keys(contact).length > 0 ? { contact } : {};
}

/** The request, as the relay reads it. @param fields  without faults, agreed to be mailed */
export const requestOf = (kind: RequestKind, fields: RequestFields, frame: RequestFrame): RequestDocument => ({
  format: requestFormat, kind, ...frame, address: fields.address.trim(),
  consent: { mail: true, dealerCopy: fields.dealerCopy, statistics: fields.statistics }, ...contactOf(fields),
});

/** What a shortlist was reckoned with, as a request names it. */
export const seenOf = ({ catalogue: { id, asOf, version }, rules }: { catalogue: { id: string; asOf: string; version?: string | undefined }; rules: { version: string } }): RequestDocument['seen'] => ({
  catalogue: { id, asOf, ...(version !== undefined && { version }) }, rules: { version: rules.version },
});
