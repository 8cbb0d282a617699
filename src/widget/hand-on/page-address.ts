/** The page the wizard is on, as far as it is the same for everybody: what a query or a fragment holds may be somebody's own. */
function ownAddress(): string {
  // A page that was written into a frame has no address but that of the page around it.
  const own = new URL(/^(?:https?|file):/.test(location.href) ? location.href : document.baseURI);
  Object.assign(own, { search: '', hash: '', username: '', password: '' });
  return own.href;
}

const isPage = ({ protocol }: URL) => protocol === 'https:' || protocol === 'http:';

/**
 * The page that links with answers lead to.
 *
 * @param named  as the host names it, relative to his page or whole; what is no address of a page is told on the console and left aside
 */
export function pageAddress(named: string | undefined): string {
  if (!named) return ownAddress();
  const page = URL.canParse(named, document.baseURI) ? new URL(named, document.baseURI) : undefined;
  if (page && isPage(page)) return page.href;
  console.warn(`acre-to-axle: link-page: read ${named}, expected the address of a page, such as https://dealer.example/find`);
  return ownAddress();
}
