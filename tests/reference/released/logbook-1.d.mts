import type { BackupFailure, BroughtLogbook } from '../../../src/logbook/backup/backup';
import type { Entry, Issue } from '../../../src/logbook/entry';
import type { Shop } from '../../../src/logbook/fold/fold';
import type { Loaded } from '../../../src/logbook/storage/store';
import type { Result } from '../../../src/result';

export function parseEntry(from: unknown, nowMs: number): Result<Entry, Issue[]>;
export function readBackup(text: string, nowMs: number): Promise<Result<BroughtLogbook, BackupFailure>>;
export function writeBackup(loaded: Loaded, nowMs: number): Promise<string>;
export function fold(entries: Iterable<Entry>): Shop;
