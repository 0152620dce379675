import { unpack } from '../../src/logbook/backup/unpack';

/** The worker that takes backups apart, without its thread. */
export class BackupWorker {
  onmessage: (event: { readonly data: unknown }) => void = () => undefined;
  postMessage(file: Blob): void {
    const onProgress = (done: number, of: number) => this.onmessage({ data: { done, of } });
    void unpack(file, onProgress).then((unpacked) => this.onmessage({ data: { unpacked } }));
  }
  terminate(): void {
    this.onmessage = () => undefined;
  }
}
