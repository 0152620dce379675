/** Every way in which keeping an entry can fail; each has its sentence in the words. */
export type StorageFailure =
  | { readonly kind: 'full' }
  | { readonly kind: 'no-answer' }
  | { readonly kind: 'damaged'; readonly cause: string }
  | { readonly kind: 'unavailable'; readonly cause: string };

// How browsers name a database whose files they cannot read.
const DAMAGED = new Set<unknown>(['UnknownError', 'NotReadableError', 'DataError', 'EncodingError']);

/** Sorts an exception of the database into the failures that the app answers. */
export function toStorageFailure(error: unknown): StorageFailure {
  if (nameOf(error) === 'QuotaExceededError') return { kind: 'full' };
  if (nameOf(error) === 'TimeoutError') return { kind: 'no-answer' };
  if (DAMAGED.has(nameOf(error))) return { kind: 'damaged', cause: String(error) };
  return { kind: 'unavailable', cause: String(error) };
}

const nameOf = (error: unknown): unknown =>
  typeof error === 'object' && error !== null && 'name' in error ? error.name : undefined;
