import { useSignal } from '@preact/signals';
import type { FunctionComponent } from 'preact';
import { useEffect } from 'preact/hooks';

/** The place of the example on an empty bench; the drawing comes after the first frame. */
export function EmptyPicture() {
  const Picture = useSignal<FunctionComponent | undefined>(undefined);
  useEffect(() => {
    import('./example').then(
      ({ Example }) => {
        Picture.value = Example;
      },
      () => undefined, // the words beside it say the same
    );
  }, [Picture]);
  const Shown = Picture.value;
  return <div class="empty-picture">{Shown && <Shown />}</div>;
}
