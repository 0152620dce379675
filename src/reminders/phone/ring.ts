import { VIBRATION_MS } from './notification';

// Two tones a fourth apart, twice: heard over a fan, no alarm (judgement, no source).
const TONES_HZ = [660, 880, 660, 880];
const TONE_S = 0.22;
const GAP_S = 0.08;
const LOUDNESS = 0.35;
const FADE_S = 0.02;

let audio: AudioContext | undefined;

const createAudio = (): AudioContext | undefined =>
  'AudioContext' in globalThis ? new AudioContext() : undefined;

/** To make a sound takes a slow phone 150 ms: a tap does not wait for it. */
const BEHIND_MS = 2_000;

/**
 * Gets the sound ready behind the first tap, for a browser plays none before one. Where it may only be woken in a tap, the next tap does;
 * once it runs no tap is heard any more.
 */
export function armSound(): void {
  const taps = new AbortController();
  const arm = (): void => {
    if (audio?.state === 'running') taps.abort();
    else if (audio) void audio.resume();
    else
      setTimeout(() => {
        audio ??= createAudio();
        void audio?.resume();
      }, BEHIND_MS);
  };
  addEventListener('pointerdown', arm, taps);
  addEventListener('keydown', arm, taps);
}

/** Plays the tones; nothing is heard where no tap came before. */
function playTones(): void {
  audio ??= createAudio();
  if (!audio) return;
  void audio.resume();
  for (const [index, hertz] of TONES_HZ.entries())
    playTone(audio, hertz, audio.currentTime + index * (TONE_S + GAP_S));
}

function playTone(context: AudioContext, hertz: number, atS: number): void {
  const tone = context.createOscillator();
  const volume = context.createGain();
  tone.frequency.value = hertz;
  volume.gain.setValueAtTime(0, atS);
  volume.gain.linearRampToValueAtTime(LOUDNESS, atS + FADE_S);
  volume.gain.setValueAtTime(LOUDNESS, atS + TONE_S - FADE_S);
  volume.gain.linearRampToValueAtTime(0, atS + TONE_S);
  tone.connect(volume).connect(context.destination);
  tone.start(atS);
  tone.stop(atS + TONE_S);
}

/** Shakes the phone, where it can. */
export function vibrate(): void {
  if ('vibrate' in navigator) navigator.vibrate(VIBRATION_MS);
}

const FLASH_MS = 3200;

/** Lights the edges of the screen in three slow pulses, or once where less motion is asked for; the style does it. */
export function flash(): void {
  const { dataset } = document.documentElement;
  dataset['flash'] = 'on';
  setTimeout(() => {
    delete dataset['flash'];
  }, FLASH_MS);
}

/** Sound, vibration and flash at once. */
export function ring(): void {
  playTones();
  vibrate();
  flash();
}
