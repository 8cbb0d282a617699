import { handOver } from '../hand-over.ts';

/** What a buyer does to take something along, each with how it went. */

type Field = HTMLInputElement | HTMLTextAreaElement;

/** Copies what stands in a field; where a page may not, it is selected there, to be copied by hand. */
export async function copied(field: Field): Promise<'copied' | 'marked'> {
  try {
    await navigator.clipboard.writeText(field.value);
    return 'copied';
  } catch {
    // Without a secure address there is no clipboard, and a policy may forbid it.
    field.focus();
    field.select();
    return 'marked';
  }
}

export const canShare = (data: ShareData) => typeof navigator.share === 'function' && (navigator.canShare?.(data) ?? true);

/** Lets the device share a link; whoever thinks better of it hears nothing of it. */
export async function shared(data: ShareData): Promise<'shared' | 'not-shared' | undefined> {
  try {
    await navigator.share(data);
    return 'shared';
  } catch (trouble) {
    return (trouble as Error).name === 'AbortError' ? undefined : 'not-shared';
  }
}

/** Hands a mail to the buyer as a file. */
export const saveMail = (name: string, text: string) => handOver(name, 'message/rfc822', text);
