import { unpack } from './unpack';

// Takes a backup apart and sums it off the page's own thread: whatever is in the file, the screen goes on.
addEventListener('message', async ({ data }: MessageEvent<Blob>) => {
  postMessage(await unpack(data));
});
