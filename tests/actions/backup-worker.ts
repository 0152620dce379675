import { unpack } from '../../src/logbook/backup/unpack';

/** The worker that takes backups apart, without its thread. */
export class BackupWorker {
  onmessage: (event: { readonly data: unknown }) => void = () => undefined;
  postMessage(file: Blob): void {
    void unpack(file).then((data) => this.onmessage({ data }));
  }
  terminate(): void {
    this.onmessage = () => undefined;
  }
}
