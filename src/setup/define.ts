import { AcreSetUp } from './page.ts';

if (!customElements.get('acre-set-up')) customElements.define('acre-set-up', AcreSetUp);

declare global {
  interface HTMLElementTagNameMap {
    'acre-set-up': AcreSetUp;
  }
}
