import { useSignal } from '@preact/signals';
import { useCallback, useEffect, useRef } from 'preact/hooks';
import { type ColourDesk, openColourDesk } from '../../../actions/match/colour-desk';
import type { Match } from '../../../logbook/fold/piece/matches';
import type { Advice } from '../../../shop/colour/advice';
import type { LotChanges } from '../../../shop/colour/lessons';

export type AdviceState =
  | { readonly state: 'working' | 'lost' }
  | { readonly state: 'ready'; readonly advice: Advice };

/** A colour desk for as long as the page is open. */
export function useDesk(): () => ColourDesk {
  const desk = useRef<ColourDesk | undefined>(undefined);
  useEffect(() => () => desk.current?.close(), []);
  return useCallback(() => {
    desk.current ??= openColourDesk();
    return desk.current;
  }, []);
}

/** The advice for a match, worked out off the main thread again whenever what it rests on changes. */
export function useAdvice(match: Match, all: readonly Match[], lots: LotChanges) {
  const desk = useDesk();
  const shown = useSignal<AdviceState>({ state: 'working' });
  const asked = useRef(0);
  const content = JSON.stringify([match, all.filter((other) => bearsOn(match, other)), lots]);
  const ask = useCallback(async () => {
    const [given, others, changes] = JSON.parse(content) as [Match, Match[], LotChanges];
    asked.current++;
    const number = asked.current;
    const answer = await desk()
      .advise(given, others, changes)
      .then(
        (advice): AdviceState => ({ state: 'ready', advice }),
        (): AdviceState => ({ state: 'lost' }),
      );
    if (number === asked.current) shown.value = answer;
  }, [content, desk, shown]);
  useEffect(() => void ask(), [ask]);
  return { shown: shown.value, retry: () => void ask() };
}

/** Whether another match was made with the same base, or has a tinter of this one. */
function bearsOn({ base, tinters }: Match, other: Match): boolean {
  return (
    base === other.base ||
    tinters.some(({ ingredient }) => other.tinters.some((one) => one.ingredient === ingredient))
  );
}
