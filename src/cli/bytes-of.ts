/** Far beyond the largest lot: a stream that goes on, such as a device, must end somewhere. */
const most = 32 * 1024 * 1024;

/** All that a stream gives; fails with EFBIG where that is more than any document of ours. */
export async function bytesOf(stream: AsyncIterable<Uint8Array>): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  let length = 0;
  for await (const chunk of stream) {
    length += chunk.length;
    if (length > most) throw Object.assign(new Error('too large'), { code: 'EFBIG' });
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
}
