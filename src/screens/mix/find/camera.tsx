import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { Button } from '../../../parts/frame/button';
import { FIND_WORDS as WORDS } from '../../../words/mix/tools';
import { jarIdOf, qrReader } from './barcode';

const LOOK_EVERY_MS = 300;

interface CameraProps {
  readonly onJar: (id: string) => void;
  readonly onStop: () => void;
}

/** Looks through the camera for a label of a jar. The picture stays on this device. */
export function Camera({ onJar, onStop }: CameraProps) {
  const video = useRef<HTMLVideoElement>(null);
  const says = useSignal<string>(WORDS.looking);
  useEffect(() => {
    const shown = video.current;
    let stream: MediaStream | undefined;
    let isOver = false;
    const look = async (): Promise<void> => {
      const codes = shown && shown.readyState >= 2 ? await qrReader()?.detect(shown) : [];
      const texts = (codes ?? []).map(({ rawValue }) => rawValue);
      const id = texts.map(jarIdOf).find((one) => one !== undefined);
      if (isOver) return;
      if (id) onJar(id);
      else if (texts.length > 0) says.value = WORDS.foreign;
    };
    const timer = setInterval(() => void look().catch(() => undefined), LOOK_EVERY_MS);
    navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment' } }).then(
      (opened) => {
        stream = opened;
        if (isOver) for (const track of opened.getTracks()) track.stop();
        else if (shown) shown.srcObject = opened;
      },
      () => {
        says.value = WORDS.noCamera;
      },
    );
    return () => {
      isOver = true;
      clearInterval(timer);
      for (const track of stream?.getTracks() ?? []) track.stop();
    };
  }, [onJar, says]);
  return (
    <div class="stack">
      <video ref={video} class="camera" autoplay playsInline muted aria-label={WORDS.picture} />
      <p role="status">{says.value}</p>
      <Button icon="close" onClick={onStop}>
        {WORDS.stop}
      </Button>
    </div>
  );
}
