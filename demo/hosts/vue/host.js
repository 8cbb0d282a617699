import { createApp, markRaw } from 'vue';
import Host from './Host.vue';

// The document is the wizard's to read; Vue has no need to watch what is in it.
const catalogue = markRaw(await (await fetch('/catalogue.json')).json());
createApp(Host, { catalogue }).mount('#host');
