import type { AskingWords, TellingWords } from '../reasons/words/words.ts';
import type { HandOnWords } from '../widget/hand-on/words/words.ts';
import type { Parts } from '../widget/language-parts.ts';
import type { LaterParts } from '../widget/later-parts.ts';
import type { MailWords } from '../widget/mail/words/words.ts';
import type { UnitWords } from '../widget/unit/words/words.ts';

/** What a file of words gives. */
interface Sibling {
  asking: AskingWords;
  telling: TellingWords;
  handOn: HandOnWords;
  mail: MailWords;
  unit: UnitWords;
}

/** The part of Trusted Types that is used: not every browser has it, nor do the types. */
interface TrustedTypes {
  createPolicy(name: string, rules: { createScriptURL(url: string): string }): { createScriptURL(url: string): unknown };
}

/** Lets through the addresses of siblings alone; a policy that lists `trusted-types` has to name it. */
let policy: ReturnType<TrustedTypes['createPolicy']> | undefined;

function trusted(url: string, ours: readonly string[]): string {
  const { trustedTypes } = globalThis as { trustedTypes?: TrustedTypes };
  if (!trustedTypes) return url;
  policy ??= trustedTypes.createPolicy('acre-to-axle', {
    createScriptURL(asked) {
      if (!ours.includes(asked)) throw new TypeError(`${asked} is no file of this wizard`);
      return asked;
    },
  });
  return policy.createScriptURL(url) as string;
}

/**
 * A script element is the one way to a module that every browser checks against a hash: `import()` takes none, and
 * not all of them heed that of a preload.
 */
function checked(url: string, integrity: string, ours: readonly string[]): Promise<void> {
  const script = document.createElement('script');
  return new Promise<void>((resolve, reject) => {
    script.type = 'module';
    script.integrity = integrity;
    script.crossOrigin = 'anonymous';
    script.onload = () => resolve();
    script.onerror = () => reject(new Error(`${url} can't be had, or isn't the file that belongs to this script`));
    script.src = trusted(url, ours);
    document.head.append(script);
  }).finally(() => script.remove());
}

/**
 * The languages that lie beside a script, each a module of words alone.
 *
 * @param base       address of the script
 * @param siblings   by language: name of the file, and its hash as `integrity` takes it
 * @returns the parts of a language; they reject where its file isn't there or isn't the one that was built with this script
 */
export function siblingsOf(base: string, siblings: Readonly<Record<string, { file: string; integrity: string }>>) {
  const urlOf = (file: string) => new URL(file, base).href;
  const ours = Object.values(siblings).map(({ file }) => urlOf(file));
  const loaded = new Map<string, Promise<Sibling>>();
  async function load(tag: string): Promise<Sibling> {
    const { file, integrity } = siblings[tag]!;
    const url = urlOf(file);
    await checked(url, integrity, ours);
    // Evaluated once and kept by the page: this hands out what was checked, and fetches nothing.
    return import(/* @vite-ignore */ url) as Promise<Sibling>;
  }
  function sibling(tag: string): Promise<Sibling> {
    const loading = loaded.get(tag) ?? load(tag);
    loaded.set(tag, loading);
    // What couldn't be had may be there when it is asked for again.
    loading.catch(() => loaded.delete(tag));
    return loading;
  }
  return (tag: string): Parts & LaterParts => ({
    asking: async () => (await sibling(tag)).asking, telling: async () => (await sibling(tag)).telling, handOn: async () => (await sibling(tag)).handOn,
    mail: async () => (await sibling(tag)).mail, unit: async () => (await sibling(tag)).unit,
  });
}
