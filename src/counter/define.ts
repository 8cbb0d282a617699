import '../widget/define.ts';
import { AcreCounter } from './page.ts';

if (!customElements.get('acre-counter')) customElements.define('acre-counter', AcreCounter);

declare global {
  interface HTMLElementTagNameMap {
    'acre-counter': AcreCounter;
  }
}
