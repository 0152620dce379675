import { answer } from './answer';

addEventListener('message', ({ data }) => postMessage(answer(data)));
