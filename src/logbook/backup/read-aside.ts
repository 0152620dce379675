import { fail, type Result } from '../../result';
import type { BackupFailure, OnProgress } from './backup';
import { type Brought, readBackupFile } from './backup-file';

/** What the worker says: how far it is, or what it has read. */
export type Said =
  | { readonly done: number; readonly of: number }
  | { readonly read: Result<Brought, BackupFailure> };

/** How a backup that is being read is watched, and stopped. */
export interface Watch {
  readonly onProgress: OnProgress;
  readonly signal: AbortSignal;
}

/** What a backup file holds, read by a worker; where there are none, here. */
export function readAside(file: Blob, watch?: Watch): Promise<Result<Brought, BackupFailure>> {
  if (typeof Worker !== 'function') return readBackupFile(file, watch?.onProgress);
  const worker = new Worker(new URL('./backup.worker.ts', import.meta.url), { type: 'module' });
  const reading = new Promise<Result<Brought, BackupFailure>>((resolve) => {
    worker.onmessage = ({ data }: MessageEvent<Said>) => {
      if ('read' in data) resolve(data.read);
      else watch?.onProgress(data.done, data.of);
    };
    worker.onerror = () => resolve(fail({ kind: 'unreadable' }));
    watch?.signal.addEventListener('abort', () => resolve(fail({ kind: 'stopped' })));
  });
  return reading.finally(() => worker.terminate());
}
