// The app and the way to the engine on one address: `/hub` is passed on to the web socket of the nats-server.
import { preview } from 'vite';

/** Lets only pages of this address open a socket. */
const onlyOwnPages = {
  name: 'only-own-pages',
  configurePreviewServer({ httpServer }) {
    httpServer.prependListener('upgrade', ({ headers }, socket) => {
      const { origin, host } = headers;
      if (origin !== undefined && new URL(origin).host !== host) socket.destroy();
    });
  },
};

/** Serves the built app with its hub, for this machine and a server that stands in front of it; gives the address and the way to end it. */
export async function serveHub({ port, natsPort, outDir = 'dist' }) {
  const server = await preview({
    build: { outDir: new URL(`../../${outDir}`, import.meta.url).pathname },
    plugins: [onlyOwnPages],
    preview: {
      host: '127.0.0.1',
      port,
      strictPort: port !== 0,
      allowedHosts: true, // by whatever name the server in front is called
      proxy: { '^/hub$': { target: `ws://127.0.0.1:${natsPort}`, ws: true } },
    },
  });
  const { port: taken } = server.httpServer.address();
  return { address: `http://localhost:${taken}/`, close: () => server.close() };
}
