import { fail, type Result } from '../../result';
import type { OnProgress } from './backup';
import { type Brought, readBackupFile } from './backup-file';
import type { BackupFailure } from './content';
import type { Unpacked, Unpacking } from './unpack';

/** How a backup that is being read is watched, and stopped. */
export interface Watch {
  readonly onProgress: OnProgress;
  readonly signal: AbortSignal;
}

type Read<Value> = Promise<Result<Value, BackupFailure>>;

/** What a backup file holds: taken apart by a worker, its entries read here a few at a time, until it is stopped. */
export function readAside(file: Blob, watch?: Watch): Read<Brought> {
  const stopped = new Promise<Result<never, BackupFailure>>((resolve) => {
    watch?.signal.addEventListener('abort', () => resolve(fail({ kind: 'stopped' })));
  });
  const takeApart = (whole: Blob): Read<Unpacked> => unpackAside(whole, stopped, watch?.onProgress);
  return Promise.race([readBackupFile(file, takeApart, watch?.onProgress), stopped]);
}

function unpackAside(file: Blob, stopped: Read<never>, onProgress?: OnProgress): Read<Unpacked> {
  const worker = new Worker(new URL('./backup.worker.ts', import.meta.url), { type: 'module' });
  const unpacked = new Promise<Result<Unpacked, BackupFailure>>((resolve) => {
    worker.onmessage = ({ data }: MessageEvent<Unpacking>) => {
      if ('unpacked' in data) resolve(data.unpacked);
      else onProgress?.(data.done, data.of);
    };
    worker.onerror = () => resolve(fail({ kind: 'unreadable' }));
    worker.postMessage(file);
  });
  return Promise.race([unpacked, stopped]).finally(() => worker.terminate());
}
