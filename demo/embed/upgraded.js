/* Sets what it likes before the script is there, as a page does that is built by several hands. */
const before = document.querySelector('#before');
before.answers = { format: 'acre-to-axle/answers/1', tasks: [{ task: 'dig' }] };
before.catalogue = await (await fetch('../catalogue.json')).json();
before.lang = 'de';

await import('../widget/acre-to-axle.js');

const after = document.createElement('acre-to-axle');
after.setAttribute('units', 'metric');
after.setAttribute('catalogue', '../catalogue.json');
document.querySelector('#later').append(after);
