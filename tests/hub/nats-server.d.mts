export interface NatsGiven {
  readonly dir: string;
  readonly port: number;
  readonly password?: string;
  readonly passwordHash?: string;
  readonly name?: string;
  /** Of everything that the server may keep. */
  readonly mostBytes?: number;
  readonly cluster?: { readonly port: number; readonly routes: readonly number[] };
}
export interface Nats {
  readonly port: number;
  readonly ended: Promise<number | null>;
  kill(): Promise<void>;
  stop(): Promise<void>;
}
export const NATS_SERVER: string;
export function hashed(password: string): string;
export function configOf(given: NatsGiven): string;
export function freePort(): Promise<number>;
export function startNats(given: NatsGiven): Promise<Nats>;
