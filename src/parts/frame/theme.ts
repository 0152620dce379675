import { effect } from '@preact/signals';
import { remembered } from '../kept/remembered';

export const THEMES = ['phone', 'light', 'dark'] as const;
export type Theme = (typeof THEMES)[number];

const isTheme = (text: string): text is Theme => (THEMES as readonly string[]).includes(text);

/** Light, dark, or as the phone has it. */
export const theme = remembered<Theme>('coatwait-theme', 'phone', isTheme);

/** Keeps the page in the theme chosen. Called once, by the door. */
export function followTheme(): void {
  effect(() => {
    const chosen = theme.now.value;
    if (chosen === 'phone') delete document.documentElement.dataset['theme'];
    else document.documentElement.dataset['theme'] = chosen;
  });
}
