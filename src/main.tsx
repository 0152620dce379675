import { registerSW } from 'virtual:pwa-register';
import { signal } from '@preact/signals';
import { render } from 'preact';
import { App } from './app';
import { drawOnceATask } from './parts/frame/draw-once';
import { followAddress } from './parts/frame/route';
import { openDoor } from './parts/frame/shop-door';
import { followTheme } from './parts/frame/theme';
import { showToast } from './parts/frame/toast';
import { trustOwnScripts } from './parts/frame/trusted-scripts';
import { OFFLINE_FAILED } from './words/frame/app';
import './style.css';

trustOwnScripts();
const newVersion = signal<(() => void) | undefined>(undefined);

const bringInNewVersion = registerSW({
  onNeedRefresh() {
    newVersion.value = () => {
      // A page open since the very first visit is not reloaded by the plug-in; this one always is, and only by a tap.
      navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
      void bringInNewVersion();
    };
  },
  onNeedReload() {
    // Another tab brought the new version in: this one keeps its form, and reloads when asked.
    newVersion.value = () => location.reload();
  },
  onRegisterError() {
    showToast({ text: OFFLINE_FAILED });
  },
});

const root = document.getElementById('app');
if (!root) throw new Error('index.html has no #app');
drawOnceATask();
followTheme();
followAddress();
render(<App newVersion={newVersion} door={openDoor()} />, root);
