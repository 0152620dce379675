import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { CAMERA_WORDS } from '../../words/frame/camera';
import { Button } from '../blocks/button';
import { qrReader } from './qr-reader';

const LOOK_EVERY_MS = 300;

interface CameraProps {
  /** What a code says; gives whether it is one of those looked for. */
  readonly onText: (text: string) => boolean;
  readonly looking: string;
  readonly foreign: string;
  readonly onStop: () => void;
}

/** Looks through the camera for a code. The picture stays on this device. */
export function Camera({ onText, looking, foreign, onStop }: CameraProps) {
  const video = useRef<HTMLVideoElement>(null);
  const says = useSignal<string>(looking);
  useEffect(() => {
    const shown = video.current;
    let stream: MediaStream | undefined;
    let isOver = false;
    const look = async (): Promise<void> => {
      const codes = shown && shown.readyState >= 2 ? await qrReader()?.detect(shown) : [];
      const texts = (codes ?? []).map(({ rawValue }) => rawValue);
      if (isOver || texts.length === 0 || texts.some(onText)) return;
      says.value = foreign;
    };
    const timer = setInterval(() => void look().catch(() => undefined), LOOK_EVERY_MS);
    navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment' } }).then(
      (opened) => {
        stream = opened;
        if (isOver) for (const track of opened.getTracks()) track.stop();
        else if (shown) shown.srcObject = opened;
      },
      () => {
        says.value = CAMERA_WORDS.noCamera;
      },
    );
    return () => {
      isOver = true;
      clearInterval(timer);
      for (const track of stream?.getTracks() ?? []) track.stop();
    };
  }, [onText, foreign, says]);
  return (
    <div class="stack">
      <video ref={video} class="camera" autoplay playsInline muted aria-label={CAMERA_WORDS.picture} />
      <p role="status">{says.value}</p>
      <Button icon="close" onClick={onStop}>
        {CAMERA_WORDS.stop}
      </Button>
    </div>
  );
}
