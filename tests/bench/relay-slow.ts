/** Holds connections open and says next to nothing on them. Arguments: port, how many. */
import { connect } from 'node:net';
import { setTimeout as wait } from 'node:timers/promises';

const [port, many] = process.argv.slice(2).map(Number) as [number, number];
/** Opened at once, and how long between [ms]: as slow ones come, one after the other. */
const [together, pause] = [50, 20];
let open = 0;

function hold(): void {
  // A head that never ends: slow, not idle.
  const socket = connect(port, '127.0.0.1', () => {
    open += 1;
    socket.once('close', () => { open -= 1; });
    socket.write('POST /v1/shortlists HTTP/1.1\r\nHost: relay.example\r\nX-A: ');
  });
  socket.on('error', () => {}).once('close', () => setTimeout(hold, pause)).resume();
}

process.on('message', () => process.send!(open));
process.once('disconnect', () => process.exit());
for (let begun = 0; begun < many; begun += together) {
  for (let each = 0; each < Math.min(together, many - begun); each += 1) hold();
  await wait(pause);
}
process.send!('held');
