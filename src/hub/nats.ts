import {
  AckPolicy,
  DeliverPolicy,
  DiscardPolicy,
  JetStreamApiError,
  type JetStreamManager,
  jetstream,
  jetstreamManager,
  RetentionPolicy,
  StorageType,
  type StreamConfig,
} from '@nats-io/jetstream';
import { AuthorizationError, type NatsConnection, nanos, wsconnect } from '@nats-io/nats-core';
import { MINUTE_MS } from '../units';
import { HubFailure } from './hub-failure';
import { type Connect, HUB_USER, type HubLink, type Stored } from './hub-link';

const PATIENCE_MS = 8_000;
const ALIVE_MS = 3_000;
const PING_MS = 15_000;
/** The engine says so often that it is there; two silences cut the line. */
const HEARTBEAT_MS = 5_000;
const EXPIRES_MS = 30_000;
/** After so long without a phone the engine drops what it reads with. */
const FORGOTTEN_MS = 5 * MINUTE_MS;
/** So many entries are handed over at once, so that a long logbook comes in few and large steps. */
const AT_ONCE = 2_000;
/** A hub of several machines keeps everything on three, and goes on with two. */
const COPIES = 3;

/** Refused by the engine (nats-server, `errors.json`): the store took no more, for a reason said in words. */
const STORE_FAILED = 10077;
const NO_ROOM = new Set([10023, 10047, 10028, 10052, 10074]);
const NOT_FOUND = 10059;
const NO_MESSAGE = 10037;
const OVERLAPS = new Set([10058, 10065]);

/** Opens lines to the hub at an address, such as `wss://shop.example/hub`. */
export const natsAt =
  (address: string): Connect =>
  async ({ password, shop }, how) => {
    const line = await wsconnect({
      servers: [address],
      user: HUB_USER,
      pass: password,
      timeout: PATIENCE_MS,
      pingInterval: PING_MS,
      maxPingOut: 1,
      reconnect: false, // a line that is cut is given up, and all is looked at afresh
      ignoreClusterUpdates: true, // another machine is asked at this address too
      ...(address.startsWith('ws:') && { tls: null }),
    }).catch((error: unknown) => {
      throw new HubFailure(error instanceof AuthorizationError ? 'wrong-sign-in' : 'unreachable');
    });
    try {
      return await linkOf(line, shop, how);
    } catch (error) {
      await line.close();
      throw failureOf(error);
    }
  };

async function linkOf(line: NatsConnection, shop: string, how: 'join' | 'hold'): Promise<HubLink> {
  const manager = await jetstreamManager(line, { timeout: PATIENCE_MS });
  const js = jetstream(line, { timeout: PATIENCE_MS });
  const entries = `coatwait-${shop}`;
  const photos = `${entries}-photos`;
  const copies = line.info?.cluster ? COPIES : 1;
  for (const [name, subject] of [
    [entries, `coatwait.${shop}.entry.*`],
    [photos, `coatwait.${shop}.photo.>`],
  ] as const)
    await ensure(manager, streamOf(name, subject, copies), how);
  const streamFor = (subject: string): string => (subject.includes('.photo.') ? photos : entries);

  async function get(subject: string): Promise<Uint8Array<ArrayBuffer> | undefined> {
    const found = await manager.streams
      .getMessage(streamFor(subject), { last_by_subj: subject })
      .catch((error: unknown) => {
        if (codeOf(error) === NO_MESSAGE) return null;
        throw failureOf(error);
      });
    return found ? plain(found.data) : undefined;
  }

  return {
    async look() {
      const { created, state } = await manager.streams.info(entries).catch(rethrow);
      return { since: String(created), count: state.messages, last: state.last_seq };
    },
    async put(subject, body) {
      try {
        await js.publish(subject, body, { timeout: PATIENCE_MS });
        return 'stored';
      } catch (error) {
        if (codeOf(error) !== STORE_FAILED) throw failureOf(error);
        // "Maximum messages per subject exceeded" and "maximum bytes exceeded" come under one number.
        const there = await get(subject);
        if (!there) throw new HubFailure('full');
        return there;
      }
    },
    get,
    async follow(after, take) {
      // On as many machines as the entries: one that lies on a single machine may be put on the one that has just died.
      const consumer = await manager.consumers
        .add(entries, {
          deliver_policy: DeliverPolicy.StartSequence,
          opt_start_seq: after + 1,
          ack_policy: AckPolicy.None,
          inactive_threshold: nanos(FORGOTTEN_MS),
          mem_storage: true,
          num_replicas: copies,
        })
        .then(({ name }) => js.consumers.get(entries, name))
        .catch(rethrow);
      const messages = await consumer.consume({
        max_messages: AT_ONCE,
        expires: EXPIRES_MS,
        idle_heartbeat: HEARTBEAT_MS,
      });
      void cutWhereSilent(messages.status(), line);
      void line.closed().then(() => messages.stop());
      let some: Stored[] = [];
      for await (const { seq, subject, data, info } of messages) {
        some.push({ seq, subject, body: plain(data) });
        if (info.pending > 0 && some.length < AT_ONCE) continue;
        const whole = some;
        some = [];
        await take(whole);
      }
    },
    async isAlive() {
      let timer: ReturnType<typeof setTimeout> | undefined;
      const late = new Promise<never>((_, reject) => {
        timer = setTimeout(() => reject(new HubFailure('unreachable')), ALIVE_MS);
      });
      await Promise.race([line.rtt(), late]).finally(() => clearTimeout(timer));
    },
    cut: line.closed().then(() => undefined),
    close: () => line.close().catch(() => undefined), // cut is cut
  };
}

/** The machine that reads for this phone may die while the line is to another one: silence cuts the line too. */
async function cutWhereSilent(
  events: AsyncIterable<{ readonly type: string }>,
  line: NatsConnection,
): Promise<void> {
  for await (const { type } of events) if (type === 'heartbeats_missed') return line.close();
}

/** One message a subject, for ever: whatever comes second is refused, and nothing is deleted. */
const streamOf = (name: string, subject: string, copies: number) =>
  ({
    name,
    subjects: [subject],
    retention: RetentionPolicy.Limits,
    storage: StorageType.File,
    num_replicas: copies,
    max_msgs_per_subject: 1,
    discard: DiscardPolicy.New,
    discard_new_per_subject: true,
    deny_delete: true,
    deny_purge: true,
  }) satisfies Partial<StreamConfig> & { readonly name: string };

type Wanted = ReturnType<typeof streamOf>;

/** Makes sure that the hub keeps this as it must; who runs it may set how many bytes it may take, and on how many machines. */
async function ensure(manager: JetStreamManager, wanted: Wanted, how: 'join' | 'hold'): Promise<void> {
  const found = await manager.streams.info(wanted.name).catch((error: unknown) => {
    if (codeOf(error) === NOT_FOUND) return undefined;
    throw error;
  });
  if (!found && how === 'join') throw new HubFailure('no-such-shop');
  const { config } = found ?? (await manager.streams.add(wanted));
  if (!isAsWanted(config, wanted)) throw new HubFailure('foreign-stream');
}

function isAsWanted(config: StreamConfig, wanted: Wanted): boolean {
  const { num_replicas: _copies, ...must } = wanted;
  const isSame = Object.entries(must).every(
    ([key, value]) => JSON.stringify(config[key as keyof StreamConfig]) === JSON.stringify(value),
  );
  const isKept = config.max_age === 0 && config.max_msgs === -1;
  return isSame && isKept && !config.mirror && !config.sources && !config.sealed && !config.no_ack;
}

const codeOf = (error: unknown): number | undefined =>
  error instanceof JetStreamApiError ? error.code : undefined;

const rethrow = (error: unknown): never => {
  throw failureOf(error);
};

function failureOf(error: unknown): HubFailure {
  if (error instanceof HubFailure) return error;
  const code = codeOf(error);
  if (code !== undefined && NO_ROOM.has(code)) return new HubFailure('full');
  if (code !== undefined && OVERLAPS.has(code)) return new HubFailure('foreign-stream');
  // As long as a cluster has no leader it says that there is no store.
  const isStarting = error instanceof Error && error.name === 'JetStreamNotEnabled';
  if (code !== undefined || isStarting) return new HubFailure('starting');
  return new HubFailure('unreachable');
}

/** A copy of its own: the engine reads its messages into buffers that it uses again. */
const plain = (bytes: Uint8Array): Uint8Array<ArrayBuffer> => new Uint8Array(bytes);
