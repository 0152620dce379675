// Everything a person can do on the spine, in one chunk that is loaded with the first of them.
export { readAir, setForecast } from './air/log-air';
export { layCoat, logCheck, sand } from './coat';
export { emptyJar, fillJar } from './jar';
export { exportBackup, importBackup } from './keep/backup';
export { changePiece, closePiece, startPiece } from './piece';
export { changeSettings } from './settings';
export { undo } from './undo';
