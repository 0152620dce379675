// The engine of the hub, Debian's nats-server: its configuration, and its process.
import { spawn, spawnSync } from 'node:child_process';
import { randomBytes, randomInt } from 'node:crypto';
import { mkdirSync, writeFileSync } from 'node:fs';
import { connect, createServer } from 'node:net';
import { join } from 'node:path';

export const NATS_SERVER = process.env['NATS_SERVER_PATH'] ?? '/usr/sbin/nats-server';

const SALT_SIGNS = './ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789';
const ROUNDS = 10;

/** The password as the server keeps it: hashed with bcrypt, which perl's crypt knows on every Debian. */
export function hashed(password) {
  const salt = Array.from(randomBytes(21), (byte) => SALT_SIGNS[byte % 64]).join('');
  const setting = `$2a$${ROUNDS}$${salt}O`; // the last sign holds two bits alone
  const { stdout, error } = spawnSync('perl', ['-e', 'print crypt(<STDIN>, $ARGV[0])', setting], {
    input: password,
    encoding: 'utf8',
  });
  if (error || !stdout.startsWith('$2a$'))
    throw new Error('This machine cannot hash a password: perl with bcrypt is missing.');
  return stdout;
}

/** What a phone must never do: it adds, and no sign-in can take anything away. */
const NEVER = [
  'STREAM.DELETE',
  'STREAM.PURGE',
  'STREAM.MSG.DELETE',
  'STREAM.UPDATE',
  'STREAM.RESTORE',
  'STREAM.SNAPSHOT',
  'STREAM.PEER',
  'STREAM.LEADER',
];

/** The configuration of one server. It listens on this machine alone: whoever comes from elsewhere comes through the app's own address. */
export function configOf({
  dir,
  port,
  password,
  passwordHash = hashed(password),
  name = 'coatwait',
  mostBytes,
  cluster,
}) {
  const never = NEVER.map((what) => `"$JS.API.${what}.>"`).join(', ');
  const routes = cluster?.routes.map((one) => `"nats://127.0.0.1:${one}"`).join(', ');
  return `server_name: ${name}
listen: "127.0.0.1:-1"
max_payload: 1MB
jetstream { store_dir: ${JSON.stringify(join(dir, 'store'))}${mostBytes ? `, max_file_store: ${mostBytes}` : ''} }
websocket { listen: "127.0.0.1:${port}", no_tls: true }
${cluster ? `cluster { name: coatwait, listen: "127.0.0.1:${cluster.port}", no_advertise: true, routes: [${routes}] }\n` : ''}authorization {
  users: [{
    user: shop, password: "${passwordHash}"
    permissions: {
      publish: { allow: ["coatwait.>", "$JS.API.>", "$JS.ACK.>", "_INBOX.>"], deny: [${never}] }
      subscribe: { allow: ["_INBOX.>"] }
    }
  }]
}
`;
}

/**
 * A port that was free a moment ago. It lies below those that a system gives to outgoing connections (from 32768 on Linux, 49152 by RFC
 * 6335): a socket that asks for a dead hub there may be given the hub's own port, and the hub cannot have it again.
 */
export async function freePort() {
  for (;;) {
    const port = randomInt(15_000, 32_768);
    const isFree = await new Promise((resolve) => {
      const server = createServer();
      server.once('error', () => resolve(false));
      server.listen(port, '127.0.0.1', () => server.close(() => resolve(true)));
    });
    if (isFree) return port;
  }
}

/** Writes the configuration and starts the server; settles once it answers. */
export async function startNats(given) {
  const { dir, port } = given;
  mkdirSync(dir, { recursive: true, mode: 0o700 });
  const file = join(dir, 'nats-server.conf');
  writeFileSync(file, configOf(given), { mode: 0o600 });
  const child = spawn(NATS_SERVER, ['-c', file], { stdio: ['ignore', 'ignore', 'pipe'] });
  let said = '';
  child.stderr.on('data', (text) => {
    said = `${said}${text}`.slice(-4_000);
  });
  const ended = new Promise((resolve) => {
    child.once('exit', (code) => resolve(code));
    child.once('error', () => resolve(-1));
  });
  const isUp = await Promise.race([answers(port), ended.then(() => false)]);
  if (!isUp) throw new Error(`nats-server did not start:\n${said}`);
  const end = async (signal) => {
    child.kill(signal);
    await ended;
  };
  return { port, ended, kill: () => end('SIGKILL'), stop: () => end('SIGTERM') };
}

async function answers(port) {
  for (let n = 0; n < 300; n++) {
    const isOpen = await new Promise((resolve) => {
      const socket = connect(port, '127.0.0.1');
      socket.once('connect', () => resolve(true));
      socket.once('error', () => resolve(false));
      socket.once('close', () => socket.destroy());
      socket.once('connect', () => socket.end());
    });
    if (isOpen) return true;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  return false;
}
