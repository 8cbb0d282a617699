/* Scripts of a host that change what belongs to everyone. */
// oxlint-disable-next-line no-extend-native
Array.prototype.lastOne = function lastOne() { return this[this.length - 1]; };
const { fetch: fetched } = window;
window.fetch = async (...asked) => {
  const answer = await fetched(...asked);
  window.asked = (window.asked ?? 0) + 1;
  return answer;
};
document.addEventListener('keydown', (event) => { if (event.key === '/') event.preventDefault(); }, true);
