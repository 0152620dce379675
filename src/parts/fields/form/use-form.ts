import { type ReadonlySignal, useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Refused } from '../../../actions/shop';
import type { Result } from '../../../result';
import { LEFT_REFUSED } from '../../../words/common';
import { afterDrawing } from '../../frame/draw-once';
import { stillHere } from '../../frame/route';
import { showToast } from '../../frame/toast';
import { keepWhatIsTyped } from './left-form';
import { whileBusy } from './while-busy';

export interface Form {
  /** Sending was tried: from now on every field says what is wrong with it. */
  readonly isTried: ReadonlySignal<boolean>;
  readonly isBusy: ReadonlySignal<boolean>;
  /** Why the logbook did not take it. */
  readonly refused: ReadonlySignal<Refused | undefined>;
  /** Begins afresh: an empty field is no problem until it is sent again. */
  reset(): void;
  /** Sends what is whole, once at a time; gives what was kept. What is not whole gets the focus; who has left is told what was refused. */
  send<Value>(isWhole: boolean, act: () => Promise<Result<Value, Refused>>): Promise<Value | undefined>;
}

/** The state of a form between its fields and an action. */
export function useForm(): Form {
  const isTried = useSignal(false);
  const isBusy = useSignal(false);
  const refused = useSignal<Refused | undefined>(undefined);
  useEffect(keepWhatIsTyped, []);
  return {
    isTried,
    isBusy,
    refused,
    reset() {
      isTried.value = false;
      refused.value = undefined;
    },
    async send(isWhole, act) {
      if (isBusy.value) return undefined;
      const isHere = stillHere();
      const focusAgain = keepFocus();
      const done = isWhole ? await whileBusy(isBusy, act) : undefined;
      if (done) refused.value = done.ok ? undefined : done.failure;
      if (done?.ok) {
        focusAgain();
        return done.value;
      }
      isTried.value = true;
      if (isHere()) leadToProblem();
      else if (done) showToast({ text: LEFT_REFUSED(done.failure.sentence) });
      return undefined;
    },
  };
}

/** Asked before a form is sent: where it is drawn anew by that, the button of that name has the focus again. */
export function keepFocus(): () => void {
  const had = document.activeElement;
  return () =>
    afterDrawing(() => {
      if (had?.isConnected || document.activeElement !== document.body) return;
      const buttons = [...document.querySelectorAll<HTMLElement>('main button')];
      const alike = buttons.filter((one) => one.textContent === had?.textContent && one.checkVisibility());
      alike[0]?.focus({ preventScroll: true });
    });
}

/** Puts the reader at the first field that says what is wrong with it, once it is drawn. */
export const leadToProblem = (): void => afterDrawing(focusFirstProblem);

function focusFirstProblem(): void {
  const first = document.querySelector<HTMLElement>('main :is([aria-invalid="true"], .problem:not(:empty))');
  const group = first?.matches('.problem') ? first.closest('fieldset, .field, form') : undefined;
  const field = group ? group.querySelector('input') : first;
  for (let fold = first?.closest('details'); fold; fold = fold.parentElement?.closest('details'))
    fold.open = true; // what is folded away takes no focus
  field?.focus({ preventScroll: true });
  (group?.matches('form') ? field : (group ?? first))?.scrollIntoView({ block: 'center' });
}
