/** How far a mail had come when something went wrong. */
export type Stage = 'connect' | 'login' | 'envelope' | 'data' | 'done';

/**
 * What a transport says became of one mail. `closed` concerns the whole way out and none of the mail: a wrong password must not
 * refuse the queue. `unsure`: all of it went out, and nobody said whether it was taken.
 */
export type Verdict =
  | { kind: 'sent'; reply: string }
  | { kind: 'later'; reason: string; reply?: string; /** Nobody was reached: no matter of this mail. */ unreached: boolean; /** The server asks for less at once. */ slower: boolean }
  | { kind: 'refused'; reason: string; reply?: string; /** There is nobody of this address. */ noSuchAddress: boolean; /** A matter of ours, which the administrator has to look at. */ ours: boolean }
  | { kind: 'unsure'; reason: string }
  | { kind: 'closed'; reason: string; reply?: string };

/** What nodemailer tells of a failure. */
export interface Failure {
  code?: string;
  originalCode?: string;
  /** The reply's first three digits (RFC 5321, section 4.2). */
  responseCode?: number;
  response?: string;
  command?: string;
}

const longestReply = 200;
/** A server may write the address into what it says: that is nobody's who reads a log. */
export const shortReply = (reply: string) => reply.replace(/[^\s<>@]+@[^\s<>@]+/g, '(address)').replace(/[\p{Cc}\s]+/gu, ' ').slice(0, longestReply);

/** Enhanced status (RFC 3463): class, subject, detail. */
const enhancedOf = (reply: string) => /^\d{3}[ -](\d)\.(\d{1,3})\.(\d{1,3})\b/.exec(reply)?.slice(1).map(Number);
/** No such mailbox, no such domain, moved without a word where to (RFC 3463, section 3.2). */
const noSuchAddress = [1, 2, 6];
const [addressing, policy] = [1, 7];

const isOfTls = ({ code = '', originalCode = '' }: Failure) =>
  code === 'ETLS' || /CERT|SELF_SIGNED|SSL|TLS|UNABLE_TO/.test(originalCode);
/** Login needed, or failed (RFC 4954, section 6): whoever sends the mail is at fault, and all mail has it. */
const ofLogin = [530, 534, 535, 538];

/**
 * Judges a failure by how far the mail had come and what the server said.
 *
 * @param failure  as nodemailer throws it
 * @param stage  `done`: the final dot may have gone out
 */
export function verdictOf(failure: Failure, stage: Stage): Verdict {
  const { responseCode, response = '', command = '' } = failure;
  const reply = response === '' ? {} : { reply: shortReply(response) };
  const [, subject, detail] = enhancedOf(response) ?? [];
  if (failure.code === 'EMESSAGE' && command === 'MAIL FROM') return { kind: 'refused', reason: 'too large', ...reply, noSuchAddress: false, ours: true };
  if (isOfTls(failure)) return { kind: 'closed', reason: 'no safe connection', ...reply };
  if (responseCode === undefined || responseCode < 400 || responseCode > 599) {
    // After the dot nothing short of an answer says that it wasn't taken.
    if (stage === 'done') return { kind: 'unsure', reason: 'no answer' };
    if (failure.code === 'EAUTH') return { kind: 'closed', reason: 'login', ...reply };
    return { kind: 'later', reason: stage === 'connect' ? 'not reached' : 'broken off', ...reply, unreached: true, slower: false };
  }
  if (responseCode < 500) {
    return { kind: 'later', reason: `${stage} ${responseCode}`, ...reply, unreached: stage === 'connect' || stage === 'login', slower: responseCode === 421 || subject === policy };
  }
  // The server says of itself, or of us, that nothing gets in.
  if (stage === 'connect' || stage === 'login' || ofLogin.includes(responseCode)) return { kind: 'closed', reason: stage === 'connect' ? 'not let in' : 'login', ...reply };
  if (command === 'MAIL FROM' && subject === policy) return { kind: 'closed', reason: 'policy', ...reply };
  return {
    kind: 'refused', reason: subject === policy ? 'policy' : `${stage} ${responseCode}`, ...reply,
    noSuchAddress: subject === addressing && noSuchAddress.includes(detail!),
    ours: subject === policy || responseCode === 552 || responseCode === 554,
  };
}
