import { readMessage, written } from './message.ts';

const frames = () => [...document.querySelectorAll<HTMLIFrameElement>('iframe[data-acre-to-axle]')];
const originOf = ({ src }: HTMLIFrameElement) => new URL(src, document.baseURI).origin;
const greet = (frame: HTMLIFrameElement) => frame.contentWindow?.postMessage(written({ says: 'here' }), originOf(frame));

/**
 * On a page that frames the wizard: gives each `<iframe data-acre-to-axle>` the height of what is in it. Hears
 * only the page the frame was given, and takes nothing from it but a height.
 */
export function fitFrames() {
  addEventListener('message', ({ data, origin, source }) => {
    const frame = frames().find(({ contentWindow }) => contentWindow === source);
    if (!frame || origin !== originOf(frame)) return;
    const message = readMessage(data);
    if (message?.says === 'ready') greet(frame);
    if (message?.says === 'height') frame.style.blockSize = `${message.height}px`;
  });
  // A frame that was there first has told nobody.
  if (document.readyState === 'complete') frames().forEach(greet);
  else addEventListener('load', () => frames().forEach(greet));
}
