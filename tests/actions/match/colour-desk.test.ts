import { expect, test } from 'vitest';
import { DeskError, openColourDesk, type Question, type Reply } from '../../../src/actions/match/colour-desk';
import { MatchOnPaper } from '../../shop/colour/a-match';

const match = new MatchOnPaper(['ochre']).fold();

/** A worker that is told what to do by the test. */
class Puppet {
  onmessage: ((event: { data: Reply }) => void) | null = null;
  onerror: ((event: { message: string }) => void) | null = null;
  onmessageerror: (() => void) | null = null;
  readonly asked: { number: number; question: Question }[] = [];
  isEnded = false;
  postMessage(message: { number: number; question: Question }): void {
    this.asked.push(message);
  }
  terminate(): void {
    this.isEnded = true;
  }
}

function deskWith(puppets: Puppet[]) {
  return openColourDesk(() => {
    const puppet = new Puppet();
    puppets.push(puppet);
    return puppet as unknown as Worker;
  });
}
const missing = { kind: 'missing', missing: { what: 'target' } } as const;

test('each question gets its own answer, in whatever order they come', async () => {
  const puppets: Puppet[] = [];
  const desk = deskWith(puppets);
  const [one, other] = [desk.advise(match, [], {}), desk.advise(match, [match], {})];
  expect(puppets).toHaveLength(1);
  const [first, second] = puppets[0]?.asked ?? [];
  puppets[0]?.onmessage?.({ data: { number: second?.number ?? 0, ok: true, value: missing } });
  puppets[0]?.onmessage?.({ data: { number: first?.number ?? 0, ok: false, message: 'no' } });
  await expect(other).resolves.toEqual(missing);
  await expect(one).rejects.toThrow(DeskError);
});

test('a lost worker settles everything that waits, and the next question gets a new one', async () => {
  const puppets: Puppet[] = [];
  const desk = deskWith(puppets);
  const waiting = [desk.advise(match, [], {}), desk.advise(match, [], {})];
  puppets[0]?.onerror?.({ message: 'gone' });
  for (const one of waiting) await expect(one).rejects.toThrow('gone');
  expect(puppets[0]?.isEnded).toBe(true);
  const again = desk.advise(match, [], {});
  expect(puppets).toHaveLength(2);
  desk.close();
  await expect(again).rejects.toThrow('Closed.');
});

test('a worker that cannot be started is told, not waited for', async () => {
  const desk = openColourDesk(() => {
    throw new Error('no workers here');
  });
  await expect(desk.advise(match, [], {})).rejects.toThrow('no workers here');
});
