// Everything a person can do on the spine, in one chunk that is loaded with the first of them.
export { changePiece } from './change-piece';
export { changeSettings } from './change-settings';
export { closePiece } from './close-piece';
export { emptyJar } from './empty-jar';
export { exportBackup } from './export-backup';
export { fillJar } from './fill-jar';
export { importBackup } from './import-backup';
export { layCoat } from './lay-coat';
export { logCheck } from './log-check';
export { readAir } from './read-air';
export { sand } from './sand';
export { setForecast } from './set-forecast';
export { startPiece } from './start-piece';
export { undo } from './undo';
