import { store as ofCatalogue } from '../../widget/last-good.ts';
import { prefix } from './scope.ts';

/** Takes the page's own files off the device, the lists it kept, and the worker; what other pages of the site keep stays. */
export async function removeFiles(): Promise<void> {
  const container = navigator.serviceWorker as ServiceWorkerContainer | undefined;
  const registration = await container?.getRegistration();
  await registration?.unregister();
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith(prefix) || name === ofCatalogue).map((name) => caches.delete(name)));
}
