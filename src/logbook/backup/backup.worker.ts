import { type Unpacking, unpack } from './unpack';

const STRIDE = 20;
const say = (unpacking: Unpacking): void => postMessage(unpacking);

// Takes a backup apart and sums it off the page's own thread: whatever is in the file, the screen goes on.
addEventListener('message', async ({ data }: MessageEvent<Blob>) => {
  const unpacked = await unpack(data, (done, of) => {
    if (done % STRIDE === 0) say({ done, of });
  });
  say({ unpacked });
});
