import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Fold } from '../../parts/blocks/fold';
import { registration } from '../../reminders/phone/notify';
import { THIS_PHONE } from '../../words/frame/this-phone';

/*
 * On iPhone and iPad: WebKit, "Full Third-Party Cookie Blocking and More" (24 March 2020) caps script-writable storage at seven days of
 * browser use without a visit and leaves web apps on the home screen out of it; "Web Push for Web Apps on iOS and iPadOS" (16 February
 * 2023) gives notifications to home screen apps alone. That such an app has a storage of its own was not measured here: no such phone
 * was at hand.
 */
const isIphone = (): boolean =>
  /iPhone|iPad|iPod/.test(navigator.userAgent) ||
  (navigator.platform === 'MacIntel' && navigator.maxTouchPoints > 1);
const isInstalled = (): boolean => matchMedia('(display-mode: standalone)').matches;

/** What this browser and address do for the logbook, told as it is. */
export function ThisPhone() {
  const isOffline = useSignal<boolean | undefined>(undefined);
  useEffect(() => {
    void registration().then((worker) => {
      isOffline.value = worker !== undefined;
    });
  }, [isOffline]);
  const lines = [
    isInstalled() ? THIS_PHONE.installed : undefined,
    offlineLine(isOffline.value),
    ...(isIphone() && !isInstalled() ? [THIS_PHONE.iphoneBrowser, THIS_PHONE.iphoneOwn] : []),
  ].filter((line) => line !== undefined);
  return (
    <Fold title={THIS_PHONE.title} isOpen={!isSecureContext}>
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </Fold>
  );
}

function offlineLine(isOffline: boolean | undefined): string | undefined {
  if (!isSecureContext) return THIS_PHONE.notSecure;
  if (isOffline === undefined) return undefined;
  return isOffline ? THIS_PHONE.secure : THIS_PHONE.noWorker;
}
