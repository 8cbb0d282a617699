import { readMessage, written } from './message.ts';

/**
 * Inside a frame: tells the page around it how high the wizard is. Only pages the owner names are told, in
 * `<meta name="acre-to-axle-hosts" content="self https://dealer.example">`; without it, nobody is.
 */
export function tellHeight() {
  const named = document.querySelector<HTMLMetaElement>('meta[name="acre-to-axle-hosts"]')?.content.trim().split(/\s+/) ?? [];
  if (parent === window || named.length === 0) return;
  const allowed = named.map((host) => (host === 'self' ? location.origin : host));
  /** Whom the height is told; nobody before he has said that he is there. */
  let host: string | undefined;
  let told = 0;

  const tell = () => {
    if (!host) return parent.postMessage(written({ says: 'ready' }), '*');
    const height = Math.ceil(document.documentElement.getBoundingClientRect().height);
    if (height === told || height === 0) return;
    told = height;
    parent.postMessage(written({ says: 'height', height }), host);
  };
  addEventListener('message', ({ data, origin, source }) => {
    if (source !== parent || readMessage(data)?.says !== 'here') return;
    if (!allowed.includes(origin)) {
      console.warn(`acre-to-axle: ${origin} frames this page, but isn't named in <meta name="acre-to-axle-hosts">; it isn't told the height`);
      return;
    }
    host = origin;
    tell();
  });
  new ResizeObserver(tell).observe(document.documentElement);
}
