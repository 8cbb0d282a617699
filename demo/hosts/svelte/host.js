import { mount } from 'svelte';
import Host from './Host.svelte';

const catalogue = await (await fetch('/catalogue.json')).json();
mount(Host, { target: document.querySelector('#host'), props: { catalogue } });
