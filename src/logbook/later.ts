// What the logbook needs after the first screen, in one chunk.
export { admit } from './admit/admit';
export { news } from './backup/news';
export { firstPageOf } from './storage/write-first-page';
