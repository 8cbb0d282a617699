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

/** A file that is saved takes its time to be read; the address of it is given up after that [ms]. */
const kept = 60_000;

/** Hands a mail to the buyer as a file. */
export function saveMail(name: string, text: string) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'message/rfc822' }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), kept);
}
