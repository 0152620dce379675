import { useSignal } from '@preact/signals';
import { LAZY } from '../../words/common';
import { UPDATE } from '../../words/frame/app';
import { Button } from '../blocks/button';

/** A quiet line: a new version waits. Only a tap brings it in, so no form in progress is lost. */
export function UpdateBar({ onReload }: { readonly onReload: (() => void) | undefined }) {
  const isPutOff = useSignal(false);
  return (
    <div class="update" role="status">
      {onReload && !isPutOff.value && (
        <div class="update-line">
          <p>{UPDATE.ready}</p>
          <Button onClick={onReload}>{LAZY.reload}</Button>
          <Button
            kind="plain"
            onClick={() => {
              isPutOff.value = true;
            }}
          >
            {UPDATE.later}
          </Button>
        </div>
      )}
    </div>
  );
}
